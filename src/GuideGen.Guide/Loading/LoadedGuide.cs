using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Loading;

/// <summary>What could be read of a guide, and what could not. A page with an error in its front matter is left out.</summary>
/// <param name="Findings">In the order of a reader.</param>
public sealed record LoadedGuide(GuideContent Guide, ImmutableArray<Finding> Findings);
