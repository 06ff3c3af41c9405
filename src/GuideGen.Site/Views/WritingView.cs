using GuideGen.Guide.Inspection;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;
using GuideGen.Site.Drafting;
using GuideGen.Site.Planning;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>Help for those who write: how to word things, and for each kind its keys, its sections and a worked example.</summary>
static class WritingView
{
    public static ScriptObject Of(ViewContext view) => new()
    {
        ["name"] = view.Words["writing.title"],
        ["summary"] = view.Words["writing.summary"],
        ["rules_href"] = view.Links.To(Addresses.Rules),
        ["kinds"] = new ScriptArray(Enum.GetValues<ContentKind>().Select(k => new ScriptObject
        {
            ["name"] = TitleOf(view, k),
            ["summary"] = view.Words[$"writing.kinds.{NameKinds.Word(k)}.summary"],
            ["href"] = view.Links.To(Addresses.OfWriting(k)),
        })),
    };

    public static ScriptObject Of(ViewContext view, ContentKind kind)
    {
        var (path, text) = StarterGuide.Files.First(f => f.Key.StartsWith($"content/{NameKinds.Folder(kind)}/", StringComparison.Ordinal));
        return new ScriptObject
        {
            ["name"] = TitleOf(view, kind),
            ["summary"] = view.Words[$"writing.kinds.{NameKinds.Word(kind)}.summary"],
            ["word"] = NameKinds.Word(kind),
            ["folder"] = $"content/{NameKinds.Folder(kind)}/",
            ["writing_href"] = view.Links.To(Addresses.Writing),
            ["keys"] = new ScriptArray(Keys(view, kind, GuideShapes.Of(kind), "")),
            ["sections"] = new ScriptArray(SectionPlan.Of(kind).Select(s => new ScriptObject { ["title"] = s.Title, ["help"] = s.Help })),
            ["path"] = path,
            ["text"] = text,
            ["is_sent"] = kind is ContentKind.Case,
        };
    }

    static string TitleOf(ViewContext view, ContentKind kind) => view.Words[$"writing.kinds.{NameKinds.Word(kind)}.title"];

    /// <summary>Every key in the order of the page, those of keys within keys behind them.</summary>
    static IEnumerable<ScriptObject> Keys(ViewContext view, ContentKind kind, RecordOutline record, string within) =>
        PageDraft.InOrder(kind, record).SelectMany(f => Inner(f.Outline).SelectMany(r => Keys(view, kind, r, $"{within}{f.Key} › ")).Prepend(Key(view, f, within)));

    static IEnumerable<RecordOutline> Inner(Outline outline) => outline switch
    {
        RecordOutline record => [record],
        ListOutline list => Inner(list.Item),
        MapOutline map => Inner(map.Item),
        ChoiceOutline choice => choice.Ways,
        _ => [],
    };

    /// <summary>Nobody needs an example of a sentence.</summary>
    static bool IsPlain(Outline outline) => outline is ValueOutline { IsWording: true } or ListOutline { Item: ValueOutline { IsWording: true } };

    static ScriptObject Key(ViewContext view, IField field, string within) => new()
    {
        ["within"] = within,
        ["key"] = field.Key,
        ["required"] = field.IsRequired,
        ["help"] = field.Help,
        ["expected"] = field.Expected,
        ["example"] = IsPlain(field.Outline) ? "" : DraftExample.Of(field.Outline),
        ["names"] = new ScriptArray(view.Guide.NamesFor(field.Outline).Select(n => new ScriptObject { ["listed"] = new ScriptArray(n.Listed), ["text"] = n.ToString(), ["are_files"] = n.AreFiles })),
        ["notes"] = new ScriptArray(NamesToUse.NotesOn(field.Outline)),
    };
}
