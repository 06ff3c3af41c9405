using System.Globalization;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>One vehicle, one fault, one case: the same report told twice would count twice.</summary>
sealed class CaseDuplicateInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide)
    {
        var pairs = Twins(guide, OnTheSameDay).Concat(Twins(guide, WithTheSameFacts));
        return pairs.DistinctBy(p => p.Later).Select(p => Rules.CaseDuplicate.At(p.Later.Found.Span, p.Earlier.Origin.Slug).Concerning(p.Earlier.Origin.Slug).Resting(p.Earlier.Origin.Source.Path, p.Later.Origin.Source.Path));
    }

    static IEnumerable<(SolvedCase Earlier, SolvedCase Later)> Twins(GuideContent guide, Func<SolvedCase, string> key) =>
        guide.Cases.GroupBy(key, StringComparer.Ordinal).SelectMany(g => g.Skip(1).Select(later => (g.First(), later)));

    static string OnTheSameDay(SolvedCase solved) => Vehicle(solved) + solved.Date.Value.ToString("O", CultureInfo.InvariantCulture);

    /// <summary>Told again under another date: the clock, the signs and the work are the same.</summary>
    static string WithTheSameFacts(SolvedCase solved)
    {
        var codes = solved.Codes.Select(c => c.Key.Value.ToString()).Order(StringComparer.Ordinal);
        var symptoms = solved.Symptoms.Present.Select(s => s.Value).Order(StringComparer.Ordinal);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Vehicle(solved)}{string.Join(',', codes)};{string.Join(',', symptoms)};{solved.Work.Minutes?.Value};{solved.Work.Spend?.Value}");
    }

    static string Vehicle(SolvedCase solved) =>
        string.Create(CultureInfo.InvariantCulture, $"{solved.Variant.Value};{solved.Found.Value};{solved.Distance.Value};");
}
