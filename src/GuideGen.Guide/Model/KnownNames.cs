using System.Collections.Frozen;
using System.Collections.Immutable;

namespace GuideGen.Guide.Model;

/// <summary>A name that files may use, and what people call the thing; the same if nobody could read what it is called.</summary>
public sealed record KnownName(string Name, string Title);

/// <summary>What a guide has names for.</summary>
public static class KnownNames
{
    /// <summary>In the order of the vehicle's file, or of the alphabet.</summary>
    public static ImmutableArray<KnownName> Of(GuideContent guide, NameKind kind) => kind switch
    {
        NameKind.Fault => Pages(guide, ContentKind.Fault, guide.Faults),
        NameKind.Check => Pages(guide, ContentKind.Check, guide.Checks),
        NameKind.Symptom => Pages(guide, ContentKind.Symptom, guide.Symptoms),
        NameKind.Part => Pages(guide, ContentKind.Part, guide.Parts),
        NameKind.Task => Pages(guide, ContentKind.Task, guide.Tasks),
        NameKind.Tree => Pages(guide, ContentKind.Tree, guide.Trees),
        NameKind.Variant => [.. guide.Vehicle.Variants.Select(v => new KnownName(v.Key.Value, v.Value.Name.Value))],
        NameKind.System => [.. guide.Vehicle.Systems.Select(s => new KnownName(s.Key.Value, s.Value.Value))],
        NameKind.Setup => [.. guide.Vehicle.Setups.Select(s => new KnownName(s.Key.Value, s.Value.Name.Value))],
        NameKind.Hazard => [.. guide.Hazards.OrderBy(h => h.Key, StringComparer.Ordinal).Select(h => new KnownName(h.Key, h.Value.Name.Value))],
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>The names alone.</summary>
    public static FrozenSet<string> SetOf(GuideContent guide, NameKind kind) => PagesOf(kind) is { } pages ? guide.Slugs[pages] : [.. Of(guide, kind).Select(n => n.Name)];

    /// <summary>Where the things of a kind are written down.</summary>
    public static string Place(NameKind kind) => kind switch
    {
        NameKind.Variant or NameKind.System or NameKind.Setup => "content/vehicle.yml",
        NameKind.Hazard => "content/hazards.yml",
        _ => $"content/{NameKinds.Folder(PagesOf(kind)!.Value)}/",
    };

    /// <returns>Null for names that are not those of pages.</returns>
    static ContentKind? PagesOf(NameKind kind) => kind switch
    {
        NameKind.Fault => ContentKind.Fault,
        NameKind.Check => ContentKind.Check,
        NameKind.Symptom => ContentKind.Symptom,
        NameKind.Part => ContentKind.Part,
        NameKind.Task => ContentKind.Task,
        NameKind.Tree => ContentKind.Tree,
        _ => null,
    };

    static ImmutableArray<KnownName> Pages<T>(GuideContent guide, ContentKind kind, Shelf<T> shelf)
        where T : class, IGuideEntry =>
        [.. guide.Slugs[kind].Order(StringComparer.Ordinal).Select(s => new KnownName(s, shelf.Find(s)?.Name.Value ?? s))];
}
