using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Trees;
using GuideGen.Site.Weighing;

namespace GuideGen.Site;

/// <summary>A guide as far as it can be used: read, inspected, and with the trees built that the tool is to build.</summary>
/// <param name="Guide">Unbuilt where there are errors.</param>
/// <param name="Findings">The rules look at built trees as at written ones.</param>
public sealed record GuideReading(GuideContent Guide, ImmutableArray<Finding> Findings)
{
    /// <summary>Null where there are errors.</summary>
    public GuideWeights? Weights { get; init; }

    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);

    /// <param name="today">What is dated later is wrong; null if no day is to be compared with.</param>
    public static GuideReading Of(LoadedGuide loaded, DateOnly? today = null)
    {
        var apartFromTrees = GuideInspector.InspectAllButTrees(loaded.Guide, today);
        // Beside the rules for trees, of which the weights know nothing.
        var weighing = loaded.Findings.Concat(apartFromTrees).Any(f => f.Severity == Severity.Error) ? null : Task.Run(() => GuideWeights.Of(loaded.Guide));
        var written = new GuideReading(loaded.Guide, GuideInspector.WithTrees(loaded, apartFromTrees));
        if (written.HasErrors) return written;
        var weights = weighing?.GetAwaiter().GetResult() ?? GuideWeights.Of(loaded.Guide);
        var built = ComputedTrees.Fill(loaded.Guide, weights);
        return built == loaded.Guide
            ? written with { Weights = weights }
            : new GuideReading(built, GuideInspector.WithTrees(loaded with { Guide = built }, apartFromTrees)) { Weights = weights };
    }

    /// <summary>Another edition of a guide that has no errors in its first one.</summary>
    /// <param name="language">Language tag (BCP 47), one of those that the settings list.</param>
    /// <param name="memory">As the first edition was read with.</param>
    /// <returns>With the findings in translated files only.</returns>
    public static GuideReading In(string language, IGuideFiles files, DateOnly? today = null, ReadingMemory? memory = null)
    {
        var read = Of(GuideLoader.LoadIn(files, language, memory), today);
        return read with { Findings = [.. read.Findings.Where(f => Translation.TryParse(f.Span.Path, out var own) && own.Language == language)] };
    }
}
