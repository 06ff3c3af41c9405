using System.Globalization;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Pages are read through again as often as the guide asks for it in its settings.</summary>
/// <param name="today">Null where nobody says what day it is: then no page is stale.</param>
sealed class ReviewInspection(DateOnly? today) : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        if (guide.Settings.ReviewMonths is not { } months || today is not { } day) return [];
        return from page in guide.Entries
               where Provenances.Of(page)?.Reviewed is { } reviewed && reviewed.Value.AddMonths(months.Value) < day
               let last = Provenances.Of(page)!.Reviewed!.Value
               select Rules.PageStale.At(last.Span, last.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), months.Value.ToString(CultureInfo.InvariantCulture));
    }
}
