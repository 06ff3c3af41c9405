using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;

namespace GuideGen.Site.Drafting;

/// <summary>What a writer has to know of the guide before a key can be filled.</summary>
static class NamesToUse
{
    /// <summary>Names out of the guide's own lists, and else where its files are.</summary>
    public static IEnumerable<string> Of(Outline outline, GuideContent guide) => Values(outline).Select(v => v.Names).OfType<NameKind>().Select(k => Names(k, guide));

    public static IEnumerable<string> NotesOn(Outline outline) => Values(outline).Select(v => v.Note).Where(n => n.Length > 0);

    static string Names(NameKind kind, GuideContent guide)
    {
        var isListed = kind is NameKind.System or NameKind.Variant or NameKind.Setup or NameKind.Hazard;
        var names = isListed ? string.Join(", ", KnownNames.Of(guide, kind).Select(n => n.Name)) : "";
        return names.Length > 0 ? names : KnownNames.Place(kind);
    }

    static IEnumerable<ValueOutline> Values(Outline outline) => outline switch
    {
        ValueOutline value => [value],
        ListOutline list => Values(list.Item),
        MapOutline map => [.. Values(map.Key), .. Values(map.Item)],
        _ => [],
    };
}
