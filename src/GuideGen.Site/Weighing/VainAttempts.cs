using System.Collections.Immutable;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Weighing;

/// <summary>Something that owners did and that did not help.</summary>
/// <param name="Part">Slug of the part that was changed in vain; null where none is named.</param>
/// <param name="What">In an owner's words.</param>
/// <param name="Times">In how many attempts.</param>
/// <param name="Spend">In the guide's currency, of all attempts that state it.</param>
/// <param name="Minutes">Of all attempts that state it.</param>
public sealed record VainAttempt(string? Part, string What, int Times, double Spend, double Minutes);

static class VainAttempts
{
    /// <summary>Attempts on the same part, or in the same words, together: the most frequent first, then the dearest.</summary>
    public static ImmutableArray<VainAttempt> In(IEnumerable<SolvedCase> cases) =>
    [
        .. cases.SelectMany(c => c.Work.Tried)
            .GroupBy(t => t.Part?.Value ?? t.What.Value, StringComparer.OrdinalIgnoreCase)
            .Select(g => new VainAttempt(
                g.First().Part?.Value,
                g.First().What.Value,
                g.Count(),
                g.Sum(t => t.Spend?.Value ?? 0),
                g.Sum(t => t.Minutes?.Value ?? 0)))
            .OrderByDescending(v => v.Times).ThenByDescending(v => v.Spend).ThenBy(v => v.What, StringComparer.Ordinal),
    ];
}
