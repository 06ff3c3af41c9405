using GuideGen.Codes;
using GuideGen.Site.Planning;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class CodeView
{
    public static ScriptObject Of(ViewContext view, CodeInfoPage page)
    {
        var model = page.Own is { } own ? EntryView.Of(view, own) : new ScriptObject { ["sections"] = new ScriptArray(), ["variants"] = new ScriptArray() };
        var faults = view.Plan.Relations.FaultsByCode[page.Code].ToList();
        model["code"] = page.Code.ToString();
        model["name"] = page.Code + " " + CodeWords.MeaningOf(view, page.Code);
        model["meaning"] = CodeWords.MeaningOf(view, page.Code);
        model["summary"] = page.Own?.Summary.Value;
        model["module"] = page.Own?.Module?.Value;
        model["owner"] = OwnerKey(page.Code.Owner);
        model["area"] = page.Code.Area.Name;
        model["faults"] = new ScriptArray(faults.Select(view.Card));
        model["symptoms"] = view.Cards(SymptomsOf(view, faults));
        model["neighbours"] = new ScriptArray(Neighbours(view, page.Code).Select(view.Code));
        return model;
    }

    public static string OwnerKey(CodeOwner owner) => owner switch
    {
        CodeOwner.IsoSae => "standard",
        CodeOwner.Maker => "maker",
        CodeOwner.Reserved => "reserved",
        _ => throw new ArgumentOutOfRangeException(nameof(owner)),
    };

    /// <summary>What the owner may notice as well, by the faults that set the code.</summary>
    static IEnumerable<Guide.Model.Symptom> SymptomsOf(ViewContext view, IEnumerable<LikelyFault> faults) =>
        faults.SelectMany(f => f.Fault.Symptoms.Select(s => s.Key.Value)).Distinct().Select(s => view.Guide.Symptoms.Find(s)!);

    /// <summary>Other codes of the guide in the same group of 256.</summary>
    static IEnumerable<TroubleCode> Neighbours(ViewContext view, TroubleCode code) =>
        view.Plan.Codes.Where(c => c.High == code.High && c != code);
}
