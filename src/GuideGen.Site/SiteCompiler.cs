using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Pictures;
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
    /// <exception cref="SiteRefusedException">The target is not ours to write.</exception>
    public static CompileResult Compile(IGuideFiles files, Theme theme, ISiteTarget target, IProgress<CompileStage> report)
    {
        report.Report(CompileStage.Reading);
        var loaded = GuideLoader.Load(files);
        report.Report(CompileStage.Inspecting);
        var findings = GuideInspector.Inspect(loaded);
        if (findings.Any(f => f.Severity == Severity.Error)) return new CompileResult(loaded.Guide, findings, 0);
        report.Report(CompileStage.Writing);
        var plan = SitePlan.Make(loaded.Guide);
        var renderer = new SiteRenderer(plan, theme);
        var site = renderer.Files().Concat(PictureFiles.Of(loaded.Guide, files)).ToImmutableArray();
        target.Write(site, renderer.Closing());
        return new CompileResult(loaded.Guide, findings, site.Length + 1);
    }
}

/// <summary>Where a compile is.</summary>
public enum CompileStage
{
    Reading,
    Inspecting,
    Writing,
}
