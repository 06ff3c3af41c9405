using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Along 'after' no part comes back to itself: the map is drawn from a beginning.</summary>
sealed class PartCircleInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) =>
        from part in guide.Parts.All
        from before in part.After
        where Before(guide, before.Value).Contains(part.Origin.Slug)
        select Rules.PartCircle.At(before.Span, part.Origin.Slug, before.Value);

    /// <summary>A part and all that come before it, near or far.</summary>
    static HashSet<string> Before(GuideContent guide, string slug)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([slug]);
        while (open.TryPop(out var next))
        {
            if (!seen.Add(next) || guide.Parts.Find(next) is not { } part) continue;
            foreach (var before in part.After) open.Push(before.Value);
        }

        return seen;
    }
}
