using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Pictures;
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
    /// <param name="theme">The built-in look; the guide may bring pieces of its own.</param>
    /// <param name="target">Written only if no finding is an error.</param>
    /// <param name="report">Told what is being done, in the order of the stages.</param>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with. Nothing of it comes into the site.</param>
    /// <param name="memory">Of earlier compiles of the guide; null if there is none.</param>
    /// <exception cref="SiteRefusedException">The target is not ours to write.</exception>
    public static CompileResult Compile(IGuideFiles files, ThemeFiles theme, ISiteTarget target, IProgress<CompileStage> report, DateOnly? today = null, GuideMemory? memory = null)
    {
        report.Report(CompileStage.Reading);
        var guide = GuideEditions.Read(files, theme, today, memory);
        if (guide.HasErrors) return new CompileResult(guide.Guide, guide.Findings, 0);
        report.Report(CompileStage.Writing);
        try
        {
            var site = guide.Draw(files, memory);
            return new CompileResult(guide.Guide, guide.Findings, target.Write(site.All(), site.Closing()));
        }
        catch (Exception fault) when (FindingOf(fault) is { } finding)
        {
            return new CompileResult(guide.Guide, FindingList.Sort([.. guide.Findings, finding]), 0);
        }
    }

    /// <summary>What only shows when a file is drawn, if it is an author's and not ours.</summary>
    static Finding? FindingOf(Exception fault) => fault switch
    {
        ThemeException theme => theme.Finding,
        PictureException picture => picture.Finding,
        _ => null,
    };
}

/// <summary>Where a compile is.</summary>
public enum CompileStage
{
    Reading,
    Writing,
}
