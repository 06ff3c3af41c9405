using System.Globalization;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>A case is dated in a year in which its vehicle could exist, and not after today.</summary>
/// <param name="today">Null where nobody says what day it is: then no date is too late.</param>
sealed class CaseDateInspection(DateOnly? today) : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) =>
        from solved in guide.Cases
        let objection = Objection(guide.Vehicle, solved)
        where objection is not null
        select Rules.CaseDate.At(solved.Date.Span, Text(solved.Date.Value), objection);

    string? Objection(Vehicle vehicle, SolvedCase solved)
    {
        var date = solved.Date.Value;
        if (date > today) return $"which is after today, {Text(today.Value)}";
        if (date.Year < vehicle.Years.Value.First) return $"before the vehicle was first built in {vehicle.Years.Value.First}";
        var variant = vehicle.Variants.FirstOrDefault(v => v.Key.Value == solved.Variant.Value).Value;
        return variant is not null && date.Year < variant.Years.Value.First
            ? $"before the variant '{solved.Variant.Value}' was first built in {variant.Years.Value.First}"
            : null;
    }

    static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
