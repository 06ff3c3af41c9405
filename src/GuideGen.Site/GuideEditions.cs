using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Pictures;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;

namespace GuideGen.Site;

/// <summary>A guide in one language, with the look it has in it.</summary>
public sealed record GuideEdition(GuideReading Reading, GuideTheme Look);

/// <summary>A guide in all its languages. The one it was written in stands at the root of the site, each other in a folder of its tag.</summary>
/// <param name="All">The first one alone, if it has errors.</param>
public sealed record GuideEditions(ImmutableArray<GuideEdition> All)
{
    public GuideEdition First => All[0];

    public GuideContent Guide => First.Reading.Guide;

    /// <summary>What concerns every edition is found once.</summary>
    public ImmutableArray<Finding> Findings { get; } = FindingList.Sort(All.SelectMany(e => e.Reading.Findings.Concat(e.Look.Findings)).Distinct());

    /// <summary>Of all editions together: each has the same pages as the others.</summary>
    Digest Frame => DigestOf(All.Select(e => e.Reading.Guide.Frame));

    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);

    /// <param name="theme">The built-in look; the guide may bring pieces of its own.</param>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with.</param>
    /// <param name="memory">Of earlier readings of the guide; null if it is read once.</param>
    public static GuideEditions Read(IGuideFiles files, ThemeFiles theme, DateOnly? today = null, GuideMemory? memory = null)
    {
        memory ??= GuideMemory.None;
        var first = Of(GuideLoader.Load(files, memory));
        // A guide with errors in its first edition has findings enough.
        var others = first.Reading.HasErrors ? [] : first.Reading.Guide.Editions.Skip(1).Select(language =>
        {
            var edition = Of(GuideLoader.LoadIn(files, language, memory));
            return edition with { Reading = edition.Reading.OfEdition(language) };
        });
        return new GuideEditions([first, .. others]);

        GuideEdition Of(LoadedGuide loaded)
        {
            // Beside the rules, which know nothing of the look.
            var look = Task.Run(() => memory.Recall("look", GuideTheme.BasisOf(loaded.Guide), () => GuideTheme.Of(theme, loaded.Guide)));
            return new GuideEdition(GuideReading.Of(loaded, today, memory), look.GetAwaiter().GetResult());
        }
    }

    /// <summary>The whole site, ready to be drawn.</summary>
    /// <param name="memory">Of earlier readings of the guide; null if it is read once.</param>
    public EditionFiles Draw(IGuideFiles files, GuideMemory? memory = null)
    {
        var made = (memory ?? GuideMemory.None).Recall("plans", Frame, () => SitePlan.Make([.. All.Select(e => (e.Reading.Guide, e.Reading.Weights!))]));
        ImmutableArray<SitePlan> plans = [.. made.Zip(All, (plan, edition) => plan.For(edition.Reading.Guide))];
        var looks = DigestOf(All.Select(e => e.Look.Theme.Files.Digest()));
        var basis = new SiteBasis(DigestOf([ThisTool.Digest, looks, .. plans.Select(p => p.Common)]), DigestOf([ThisTool.Digest, looks, Frame]));
        return new EditionFiles([.. All.Select((e, i) => new SiteRenderer(plans[i], e.Look.Theme, basis, memory))], files);
    }

    static Digest DigestOf(IEnumerable<Digest> all)
    {
        using var digester = new Digester();
        foreach (var one in all) digester.Add(one);
        return digester.Take();
    }
}

/// <summary>The files of all editions of a guide.</summary>
public sealed class EditionFiles(ImmutableArray<SiteRenderer> renderers, IGuideFiles files)
{
    /// <summary>What follows from a page or a picture alone.</summary>
    public IEnumerable<SiteFile> Pages() => renderers.SelectMany(r => r.Pages().Concat(r.InFolder(PictureFiles.Of(r.Guide, files))));

    /// <summary>All files but the closing one. Making the search begins at once, beside whatever is done until the files are gone through.</summary>
    public IEnumerable<SiteFile> All()
    {
        ImmutableArray<IEnumerable<SiteFile>> ofEditions = [.. renderers.Select(r => r.Files().Concat(r.InFolder(PictureFiles.Of(r.Guide, files))))];
        return ofEditions.SelectMany(f => f);
    }

    public ClosingFile Closing() => renderers[0].Closing();
}
