using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Preview;

/// <summary>A guide as it stands at one moment: what was found in it, and its site, of which a file is made when it is asked for.</summary>
/// <param name="Version">Counts the times the guide was read.</param>
/// <param name="IsGood">False if the guide has errors; the files are then those of the last time it had none.</param>
/// <param name="Words">In the language of the guide.</param>
sealed record PreviewSite(int Version, ImmutableArray<Finding> Findings, bool IsGood, PreviewFiles? Files, ThemeWords Words)
{
    public static PreviewSite None { get; } = new(0, [], false, null, WordLayers.InEnglish(ThemeFiles.BuiltIn));

    /// <summary>Reads the guide anew. Never throws for what an author wrote.</summary>
    /// <param name="memory">Of the readings before.</param>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with.</param>
    public PreviewSite Next(IGuideFiles files, ThemeFiles theme, GuideMemory memory, DateOnly? today)
    {
        var guide = GuideEditions.Read(files, theme, today, memory);
        return new PreviewSite(Version + 1, guide.Findings, !guide.HasErrors, guide.HasErrors ? Files : PreviewFiles.Of(guide.Draw(files, memory)), guide.First.Look.Theme.Words);
    }
}

/// <summary>The files of a site, each drawn at most once and not before somebody wants it.</summary>
sealed class PreviewFiles
{
    readonly Dictionary<string, Lazy<byte[]>> pages;

    /// <summary>Search and data: made from all pages at once, so they wait until one of them is wanted.</summary>
    readonly Lazy<Dictionary<string, Lazy<byte[]>>> rest;

    PreviewFiles(IEnumerable<SiteFile> quick, Func<IEnumerable<SiteFile>> all)
    {
        pages = ByAddress(quick);
        rest = new(() => ByAddress(all().Where(f => !pages.ContainsKey(f.Address))));
    }

    public static PreviewFiles Of(EditionFiles site) => new(site.Pages(), site.All);

    /// <returns>Null if the site has no such file.</returns>
    /// <exception cref="ThemeException">A template is broken.</exception>
    /// <exception cref="IOException">A picture cannot be read.</exception>
    public byte[]? Find(string address) => (pages.GetValueOrDefault(address) ?? rest.Value.GetValueOrDefault(address))?.Value;

    static Dictionary<string, Lazy<byte[]>> ByAddress(IEnumerable<SiteFile> files) => files.ToDictionary(f => f.Address, f => new Lazy<byte[]>(f.Read));
}
