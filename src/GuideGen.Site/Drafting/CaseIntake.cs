using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Drafting;

/// <summary>What came of a case that an owner sent.</summary>
/// <param name="Path">Where it belongs in the guide's folder, with forward slashes; null if it has errors, is there already or is no case.</param>
/// <param name="Findings">About this case only, as if it stood there.</param>
public sealed record SentCase(string? Path, ImmutableArray<Finding> Findings)
{
    internal string Standing { get; init; } = "";

    /// <summary>The findings as lines of the file that its sender knows, which never stood in the guide.</summary>
    /// <param name="from">Path of that file.</param>
    public IEnumerable<Finding> In(string from) => Findings.Select(f => f.Span.Path != Standing ? f : f with { Span = new SourceText(from, f.Span.Source.Text).Span(f.Span.Start, f.Span.Length) });
}

/// <summary>Takes an owner's case into a guide: read and inspected as every other case is, under a name that is still free.</summary>
public static class CaseIntake
{
    const string Folder = "content/cases/";

    const string Provisional = "sent-case";

    /// <summary>Checks a case against the guide; writes nothing.</summary>
    public static SentCase Check(IGuideFiles guide, byte[] sent)
    {
        var first = With(guide, PathOf(guide, Provisional), sent);
        var read = GuideLoader.Load(first.Files).Guide.Cases.FirstOrDefault(c => c.Origin.Source.Path == first.Path);
        var (files, path) = read is null ? first : With(guide, PathOf(guide, SlugOf(read)), sent);
        ImmutableArray<Finding> findings = [.. GuideInspector.Inspect(GuideLoader.Load(files)).Where(f => f.Span.Source.Path == path || IsTwinOf(f, path))];
        // Who sends a case twice by mistake has it counted once.
        var isGood = read is not null && findings.All(f => f.Severity != Severity.Error && f.Rule != Rules.CaseDuplicate);
        return new SentCase(isGood ? path : null, findings) { Standing = path };
    }

    /// <summary>Checks a case and writes it where it belongs.</summary>
    /// <exception cref="IOException">It cannot be written. A file that has come to stand there meanwhile is never overwritten.</exception>
    public static SentCase File(string guideFolder, byte[] sent)
    {
        var taken = Check(new FolderFiles(guideFolder), sent);
        if (taken.Path is null) return taken;
        var target = Path.Combine(guideFolder, taken.Path.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        using var stream = new FileStream(target, FileMode.CreateNew, FileAccess.Write);
        stream.Write(sent);
        return taken;
    }

    /// <summary>Of two equal cases the one with the later name is marked, which may be the one that was there.</summary>
    static bool IsTwinOf(Finding finding, string path) => finding.Rule == Rules.CaseDuplicate && finding.About == Path.GetFileNameWithoutExtension(path);

    static (IGuideFiles Files, string Path) With(IGuideFiles guide, string path, byte[] sent) => (new AddedFile(guide, path, sent), path);

    /// <summary>Month, variant and fault say at a glance what a case is.</summary>
    static string SlugOf(SolvedCase sent)
    {
        var slug = $"{sent.Date.Value.ToString("yyyy-MM", CultureInfo.InvariantCulture)}-{sent.Variant.Value}-{sent.Found.Value}";
        return SlugForm.IsPlain(slug) ? slug : Provisional;
    }

    static string PathOf(IGuideFiles guide, string slug)
    {
        var taken = guide.Paths.ToHashSet(StringComparer.OrdinalIgnoreCase);
        var names = Enumerable.Range(2, taken.Count + 1).Select(i => $"{slug}-{i}").Prepend(slug);
        return names.Select(n => $"{Folder}{n}{NameKinds.Ending(ContentKind.Case)}").First(p => !taken.Contains(p));
    }
}
