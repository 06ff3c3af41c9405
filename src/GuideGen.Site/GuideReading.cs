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
    /// <param name="memory">Of earlier readings of the guide; null if it is read once.</param>
    public static GuideReading Of(LoadedGuide loaded, DateOnly? today = null, GuideMemory? memory = null)
    {
        memory ??= GuideMemory.None;
        var guide = loaded.Guide;
        var apartFromTrees = GuideInspector.InspectAllButTrees(guide, today, memory);
        // Beside the rules for trees, of which the weights know nothing.
        var weighing = loaded.Findings.Concat(apartFromTrees).Any(f => f.Severity == Severity.Error) ? null : Task.Run(WeightsOf);
        var written = new GuideReading(guide, GuideInspector.WithTrees(loaded, apartFromTrees, memory));
        if (written.HasErrors) return written;
        var weights = weighing?.GetAwaiter().GetResult() ?? WeightsOf();
        if (!guide.Trees.All.Any(t => t.IsUnbuilt)) return written with { Weights = weights };
        var built = guide with { Trees = memory.Recall("trees", ComputedTrees.BasisOf(guide, weights), () => ComputedTrees.Fill(guide, weights).Trees) };
        return new GuideReading(built, GuideInspector.WithTrees(loaded with { Guide = built }, apartFromTrees, memory)) { Weights = weights };

        GuideWeights WeightsOf()
        {
            var origin = memory.Recall("basis of weights", guide.Frame, () => GuideWeights.BasisOf(guide));
            return memory.Recall("weights", origin, () => GuideWeights.Of(guide, origin));
        }
    }

    /// <summary>
    /// The reading of an edition that is not the first: with the findings in its translated files, and all errors. The first edition has
    /// none then, so that an error in another file is a translation's doing as well.
    /// </summary>
    /// <param name="language">Language tag (BCP 47) of the edition.</param>
    public GuideReading OfEdition(string language) =>
        this with { Findings = [.. Findings.Where(f => f.Severity == Severity.Error || (Translation.TryParse(f.Span.Path, out var own) && own.Language == language))] };
}
