using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Learning;

/// <summary>Pages that say different things of the same matter.</summary>
static partial class ContradictionTables
{
    public static IEnumerable<EvidenceTable> Of(SitePlan plan) => [Limits(plan.Guide), Torques(plan.Guide), Drive(plan)];

    /// <summary>The same reading under the same condition, for a variant that both pages are about.</summary>
    static EvidenceTable Limits(GuideContent guide) => EvidenceTable.Of(
        "limits-differ",
        "The same reading with different limits",
        "reading, page, limits, other page, other limits",
        from pair in Pairs(guide.Checks.All.SelectMany(c => c.Readings.Where(r => r.Over is null).Select(r => new Statement(c, Key(r), Text(r)))))
        select (ImmutableArray<object?>)[pair.First.Matter, pair.First.Path, pair.First.Said, pair.Second.Path, pair.Second.Said]);

    /// <summary>A cable nut of the starter is not that of the generator: only pages about the same part are compared.</summary>
    static EvidenceTable Torques(GuideContent guide) => EvidenceTable.Of(
        "torques-differ",
        "The same bolt with different torques",
        "bolt, page, torque, other page, other torque",
        from pair in Pairs(guide.HandsOnPages.SelectMany(Torques))
        where pair.First.Page.Parts.Any(p => pair.Second.Page.Parts.Any(q => q.Value == p.Value))
        select (ImmutableArray<object?>)[pair.First.Matter, pair.First.Path, pair.First.Said, pair.Second.Path, pair.Second.Said]);

    /// <summary>
    /// A cause is plausible as on the page that weighs causes: likely enough, given the symptom alone, in some variant. One
    /// step between the words is no contradiction, because a symptom speaks for all its causes; nor is a grave cause that is
    /// far-fetched.
    /// </summary>
    static EvidenceTable Drive(SitePlan plan) => EvidenceTable.Of(
        "drive-differs",
        "Faults that say stop or drive to safety only, plausible behind a symptom that is two steps milder",
        "fault, fault says, symptom, symptom says, of such vehicles",
        from symptom in plan.Guide.Symptoms.All
        from cause in Shares(plan, symptom.Origin.Slug)
        where cause.Share >= GuideWeights.Plausible
        let fault = plan.Guide.Faults.Find(cause.Fault)
        where fault is { Drive.Value: <= DriveAdvice.ToSafety } && symptom.Drive.Value - fault.Drive.Value >= 2
        orderby cause.Fault, symptom.Origin.Slug
        select (ImmutableArray<object?>)[cause.Fault, DriveWords.Key(fault.Drive.Value), symptom.Origin.Slug, DriveWords.Key(symptom.Drive.Value), SignTables.Rounded(cause.Share)]);

    /// <summary>The share of each cause behind a symptom in the variant where it is largest.</summary>
    static IEnumerable<(string Fault, double Share)> Shares(SitePlan plan, string symptom) =>
        plan.Guide.Vehicle.Variants.Select(v => (string?)v.Key.Value).Append(null)
            .SelectMany(v => CauseRanking.Of(plan.Weights.Model(v), Answers.Nothing.With(symptom, true)).Causes)
            .GroupBy(c => c.Id, StringComparer.Ordinal)
            .Select(g => (g.Key, g.Max(c => c.Probability)));

    /// <param name="Matter">What is spoken of.</param>
    /// <param name="Said">What the page says of it.</param>
    sealed record Statement(IHandsOnPage Page, string Matter, string Said)
    {
        public string Path => Page.Origin.Source.Path;
    }

    static IEnumerable<(Statement First, Statement Second)> Pairs(IEnumerable<Statement> statements) =>
        from matter in statements.GroupBy(s => s.Matter, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
        from first in matter
        from second in matter
        where string.CompareOrdinal(first.Path, second.Path) < 0 && first.Said != second.Said && ShareVariant(first.Page, second.Page)
        select (first, second);

    static bool ShareVariant(IGuideEntry a, IGuideEntry b) =>
        a.Variants.IsEmpty || b.Variants.IsEmpty || a.Variants.Any(v => b.Variants.Any(w => w.Value == v.Value));

    static string Key(Reading reading) => $"{reading.Name.Value}, {reading.When.Value}".ToLowerInvariant();

    static string Text(Reading reading) => string.Create(
        CultureInfo.InvariantCulture, $"{reading.Low?.Value.ToString(CultureInfo.InvariantCulture) ?? "-"} to {reading.High?.Value.ToString(CultureInfo.InvariantCulture) ?? "-"} {reading.Unit.Value}");

    static IEnumerable<Statement> Torques(IHandsOnPage page) =>
        page.Origin.Body.Runs
            .SelectMany(r => Torque().Matches(page.Origin.Source.Text.Substring(r.Start, r.Length)))
            .Where(m => !General.Contains(m.Groups["what"].Value[..m.Groups["what"].Value.IndexOf(' ', StringComparison.Ordinal)].ToLowerInvariant()))
            .Select(m => new Statement(page, m.Groups["what"].Value.ToLowerInvariant(), m.Groups["value"].Value + " Nm"))
            .Distinct();

    /// <summary>'Four bolts' may be any four.</summary>
    static readonly HashSet<string> General =
        ["the", "a", "its", "each", "all", "both", "new", "these", "one", "two", "three", "four", "five", "six", "eight", "ten"];

    // Only a bolt, nut, screw or plug that is named right before its torque; anything else cannot be matched with certainty.
    [GeneratedRegex(@"(?<what>[a-z]+(-[a-z]+)? (bolt|nut|screw|plug)s?)( are| is)?( tightened)?( to| with| at|:|,)? (?<value>\d{1,3}(\.\d)?) Nm\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Torque();
}
