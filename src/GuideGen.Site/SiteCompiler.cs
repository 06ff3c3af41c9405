using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Site;

/// <summary>What a compile came to.</summary>
/// <param name="Files">How many files were written: none if an error was found.</param>
public sealed record CompileResult(GuideContent Guide, ImmutableArray<Finding> Findings, int Files)
{
    public bool IsWritten => Files > 0;
}

/// <summary>The whole job: a folder of content becomes a site.</summary>
public static class SiteCompiler
{
    /// <param name="target">Written only if no finding is an error.</param>
    /// <param name="report">Told what is being done, in the order of the stages.</param>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with. Nothing of it comes into the site.</param>
    /// <exception cref="SiteRefusedException">The target is not ours to write.</exception>
    public static CompileResult Compile(IGuideFiles files, Theme theme, ISiteTarget target, IProgress<CompileStage> report, DateOnly? today = null)
    {
        report.Report(CompileStage.Reading);
        var loaded = GuideLoader.Load(files);
        report.Report(CompileStage.Inspecting);
        var read = GuideReading.Of(loaded, today);
        if (read.HasErrors) return new CompileResult(read.Guide, read.Findings, 0);
        report.Report(CompileStage.Writing);
        var plan = SitePlan.Make(read.Guide);
        var renderer = new SiteRenderer(plan, theme);
        var site = renderer.Files().Concat(Pictures(read.Guide, files)).ToImmutableArray();
        target.Write(site, renderer.Closing());
        return new CompileResult(read.Guide, read.Findings, site.Length + 1);
    }

    static IEnumerable<SiteFile> Pictures(GuideContent guide, IGuideFiles files) =>
        guide.Assets.Select(path => new SiteFile(path, () => Read(files, "content/" + path)));

    static byte[] Read(IGuideFiles files, string path) =>
        files.TryRead(path, out var bytes, out var why) ? bytes : throw new IOException($"{path} cannot be read: {why}");
}

/// <summary>Where a compile is.</summary>
public enum CompileStage
{
    Reading,
    Inspecting,
    Writing,
}
