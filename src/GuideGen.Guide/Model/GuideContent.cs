using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Guide.Pictures;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>A whole guide: one vehicle model with everything that is known about its faults. Immutable.</summary>
public sealed record GuideContent(
    SiteSettings Settings,
    Vehicle Vehicle,
    Shelf<Fault> Faults,
    Shelf<Check> Checks,
    Shelf<Symptom> Symptoms,
    Shelf<Part> Parts,
    Shelf<HowTo> Tasks,
    Shelf<CodePage> Codes,
    Shelf<Tree> Trees,
    ImmutableArray<SolvedCase> Cases)
{
    /// <summary>
    /// Of all that one page can know of the others: everything in the guide but the running text of its pages. While it is the same,
    /// whatever a page shows, and whatever is wrong with it apart from likeness to others, follows from that page alone.
    /// </summary>
    public Digest Frame { get; init; }

    /// <summary>Of what concerns every page: the files that stand once, such as the vehicle's, and the paths of all others.</summary>
    public Digest Common { get; init; }

    /// <summary>The built-in hazards and the guide's own, by slug.</summary>
    public required FrozenDictionary<string, Hazard> Hazards { get; init; }

    /// <summary>Tags of the languages in which the guide stands, each an edition of its own; the one it was written in comes first.</summary>
    public required ImmutableArray<string> Editions { get; init; }

    /// <summary>By word, in the order they were written.</summary>
    public required ImmutableArray<KeyValuePair<Located<string>, Term>> Terms { get; init; }

    /// <summary>Every use of a name, found while loading.</summary>
    public required ImmutableArray<Reference> References { get; init; }

    /// <summary>Every slug that a file stands for, readable or not, so that one broken page does not break others.</summary>
    public required FrozenDictionary<ContentKind, FrozenSet<string>> Slugs { get; init; }

    /// <summary>Paths of all files of entries and cases, readable or not, relative to the guide's folder.</summary>
    public required FrozenSet<string> Files { get; init; }

    /// <summary>Kinds of names that are not all known, since the file that lists them has errors.</summary>
    public FrozenSet<NameKind> Unsure { get; init; } = [];

    /// <summary>Paths of pictures, relative to content/.</summary>
    public required ImmutableSortedSet<string> Assets { get; init; }

    /// <summary>By path relative to content/; without those that cannot be used.</summary>
    public FrozenDictionary<string, Picture> Pictures { get; init; } = FrozenDictionary<string, Picture>.Empty;

    /// <summary>With what the guide changes its look, by path in its folder <c>theme/</c>.</summary>
    public ImmutableSortedDictionary<string, SourceText> ThemePieces { get; init; } = ImmutableSortedDictionary<string, SourceText>.Empty;

    /// <summary>Every entry with a name and an address, kind by kind, slug by slug.</summary>
    public IEnumerable<IGuideEntry> Entries =>
    [
        .. Faults.All, .. Checks.All, .. Symptoms.All, .. Parts.All, .. Tasks.All, .. Codes.All, .. Trees.All,
    ];

    public IEnumerable<IHandsOnPage> HandsOnPages => [.. Faults.All, .. Checks.All, .. Tasks.All];
}

/// <summary>All entries of one kind, in the order of their slugs, and by slug.</summary>
public sealed class Shelf<T>
    where T : class, IGuideEntry
{
    readonly FrozenDictionary<string, T> bySlug;

    public Shelf(IEnumerable<T> entries)
    {
        All = [.. entries.OrderBy(e => e.Origin.Slug, StringComparer.Ordinal)];
        bySlug = All.ToFrozenDictionary(e => e.Origin.Slug);
    }

    public ImmutableArray<T> All { get; }

    public T? Find(string slug) => bySlug.GetValueOrDefault(slug);
}
