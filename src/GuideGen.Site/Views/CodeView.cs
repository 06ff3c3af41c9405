using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class CodeView
{
    public static ScriptObject Of(ViewContext view, CodeInfoPage page)
    {
        var code = page.Code;
        var meaning = CodeWords.MeaningOf(view, code);
        var model = page.Own is { } own ? EntryView.Of(view, own) : Nothing();
        var faults = view.Guide.Relations.FaultsByCode(code).ToList();
        model["code"] = code.ToString();
        model["name"] = $"{code} {meaning}";
        model["meaning"] = meaning;
        model["summary"] = page.Own?.Summary.Value;
        model["module"] = page.Own?.Module?.Value;
        model["owner"] = OwnerKey(code.Owner);
        model["area"] = code.Area.Name;
        model["faults"] = new ScriptArray(faults.Select(view.Card));
        model["symptoms"] = view.Cards(SymptomsOf(view, faults));
        model["evidence"] = EvidenceView.Of(view, view.Guide.Evidence.Of(code));
        model["group"] = new ScriptObject { ["name"] = CodeGroup.NameOf(code), ["href"] = view.Links.To(Addresses.OfGroup(CodeGroup.NameOf(code))) };
        AddStandard(view, model, CodeCatalogue.FindStandard(code));
        return model;
    }

    public static string OwnerKey(CodeOwner owner) => owner switch
    {
        CodeOwner.IsoSae => "standard",
        CodeOwner.Maker => "maker",
        CodeOwner.Reserved => "reserved",
        _ => throw new ArgumentOutOfRangeException(nameof(owner)),
    };

    static ScriptObject Nothing() => new() { ["sections"] = new ScriptArray(), ["variants"] = new ScriptArray() };

    /// <summary>What the standard adds: what the control unit saw, what to check first, what to beware of, and codes that belong to it.</summary>
    static void AddStandard(ViewContext view, ScriptObject model, CodeEntry? entry)
    {
        model["standard_meaning"] = entry?.Meaning == (string)model["meaning"]! ? null : entry?.Meaning;
        model["condition"] = entry is null ? null : CodeGroupView.ConditionOf(entry.Condition);
        model["cautions"] = new ScriptArray(entry?.Cautions ?? []);
        model["notes"] = new ScriptArray(entry?.Notes ?? []);
        var related = entry?.Related ?? new RelatedCodes([], [], []);
        model["same_subject"] = Rows(related.SameSubject);
        model["same_condition"] = Rows(related.SameCondition);
        model["neighbours"] = Rows(related.Neighbours.Except(related.SameSubject).Except(related.SameCondition));

        ScriptArray Rows(IEnumerable<TroubleCode> codes) => [.. codes.Select(view.Code)];
    }

    /// <summary>What the owner may notice as well, by the faults that set the code.</summary>
    static IEnumerable<Symptom> SymptomsOf(ViewContext view, IEnumerable<LikelyFault> faults) =>
        faults.SelectMany(f => f.Fault.Symptoms.Select(s => s.Key.Value)).Distinct().Select(s => view.Guide.Symptoms.Find(s)!);
}
