using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>A file of a kind, and the slug its name gives it.</summary>
readonly record struct SortedFile(string Path, string Slug);

/// <summary>Tells from its path what each file of a guide is.</summary>
sealed class FileSorting
{
    static readonly FrozenDictionary<string, ContentKind> Folders =
        Enum.GetValues<ContentKind>().ToFrozenDictionary(NameKinds.Folder);

    internal static readonly FrozenSet<string> SingleFiles =
        new[] { GuideLoader.SettingsFile, GuideLoader.VehicleFile, GuideLoader.HazardsFile, GuideLoader.TermsFile }.ToFrozenSet();

    const string Images = "content/images/";

    readonly Dictionary<ContentKind, Dictionary<string, SortedFile>> byKind =
        Enum.GetValues<ContentKind>().ToDictionary(k => k, _ => new Dictionary<string, SortedFile>(StringComparer.Ordinal));

    readonly ImmutableSortedSet<string>.Builder assets = ImmutableSortedSet.CreateBuilder<string>(StringComparer.Ordinal);
    readonly List<Translation> translations = [];
    readonly FindingList findings;

    FileSorting(FindingList findings) => this.findings = findings;

    public IReadOnlyList<Translation> Translations => translations;

    public ImmutableSortedSet<string> Assets => assets.ToImmutable();

    public FrozenDictionary<ContentKind, FrozenSet<string>> Slugs =>
        byKind.ToFrozenDictionary(k => k.Key, k => k.Value.Keys.ToFrozenSet());

    public FrozenSet<string> Files => byKind.Values.SelectMany(k => k.Values).Select(f => f.Path).ToFrozenSet();

    public static FileSorting Of(IEnumerable<string> paths, FindingList findings)
    {
        var sorting = new FileSorting(findings);
        foreach (var path in paths.Where(p => !SingleFiles.Contains(p) && !ThemePieces.IsPiece(p))) sorting.Take(path);
        sorting.ReportClashes();
        return sorting;
    }

    public IReadOnlyCollection<SortedFile> FilesOf(ContentKind kind) => byKind[kind].Values;

    void Take(string path)
    {
        if (Translation.TryParse(path, out var translation)) translations.Add(translation);
        else if (path.StartsWith(Images, StringComparison.Ordinal)) assets.Add(path["content/".Length..]);
        else if (TryKind(path, out var kind)) TakeEntry(kind, path);
        else Report(Rules.FileUnknown, path, path);
    }

    /// <summary>The kind of entries that a file of this path and ending would hold.</summary>
    internal static bool TryKind(string path, out ContentKind kind)
    {
        kind = default;
        return path.Split('/') is ["content", var folder, _, ..] && Folders.TryGetValue(folder, out kind) && path.EndsWith(NameKinds.Ending(kind), StringComparison.Ordinal);
    }

    void TakeEntry(ContentKind kind, string path)
    {
        var slug = Path.GetFileNameWithoutExtension(path);
        if (!SlugForm.IsGood(kind, slug)) Report(kind is ContentKind.Code ? Rules.SlugCode : Rules.SlugForm, path, slug);
        else if (!byKind[kind].TryAdd(slug, new SortedFile(path, slug))) Report(Rules.SlugDuplicate, path, slug, byKind[kind][slug].Path);
    }

    /// <summary>A guide is checked out and published on systems of many kinds; where two names are one file, one picture shows in place of the other.</summary>
    void ReportClashes()
    {
        foreach (var same in assets.GroupBy(Folded).Select(g => g.ToList()).Where(g => g.Count > 1))
        {
            foreach (var other in same.Skip(1)) Report(Rules.ImageClash, "content/" + other, same[0], other);
        }
    }

    /// <summary>As systems that fold letters see a name. Halves of characters have no form to fold to.</summary>
    static string Folded(string name) => string.Concat(name.EnumerateRunes()).Normalize(NormalizationForm.FormC).ToUpperInvariant();

    void Report(Rule rule, string path, params string[] facts) => findings.Add(rule.At(new SourceText(path, "").Top, facts));
}
