using System.Collections.Immutable;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;

namespace GuideGen.Site.Drafting;

/// <summary>Which names an author may write in a place.</summary>
/// <param name="Listed">Empty if there are too many to read, or none.</param>
/// <param name="Place">Where they are written down; a folder ends in a slash.</param>
sealed record NamesToUse(ImmutableArray<string> Listed, string Place)
{
    /// <summary>More than these nobody reads through in a comment.</summary>
    const int Most = 40;

    public bool AreFiles => Listed.IsEmpty && Place.EndsWith('/');

    public override string ToString() => Listed.IsEmpty ? Place : string.Join(", ", Listed);

    /// <summary>For each kind of name that a value in the outline can be.</summary>
    public static IEnumerable<NamesToUse> Of(Outline outline, GuideContent guide) => Values(outline).Select(v => v.Names).OfType<NameKind>().Select(k => Of(k, guide));

    /// <summary>What else a writer has to know before a key can be filled.</summary>
    public static IEnumerable<string> NotesOn(Outline outline) => Values(outline).Select(v => v.Note).Where(n => n.Length > 0);

    static NamesToUse Of(NameKind kind, GuideContent guide)
    {
        var names = KnownNames.Of(guide, kind);
        return new([.. names.Length > Most ? [] : names.Select(n => n.Name)], KnownNames.Place(kind));
    }

    static IEnumerable<ValueOutline> Values(Outline outline) => outline switch
    {
        ValueOutline value => [value],
        ListOutline list => Values(list.Item),
        MapOutline map => [.. Values(map.Key), .. Values(map.Item)],
        _ => [],
    };
}
