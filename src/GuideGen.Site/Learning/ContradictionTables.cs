using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Learning;

/// <summary>Pages that say different things of the same matter.</summary>
static partial class ContradictionTables
{
    public static IEnumerable<EvidenceTable> Of(GuideContent guide) => [Limits(guide), Torques(guide), Drive(guide)];

    /// <summary>The same reading under the same condition, for a variant that both pages are about.</summary>
    static EvidenceTable Limits(GuideContent guide) => EvidenceTable.Of(
        "limits-differ",
        "The same reading with different limits",
        "reading, page, limits, other page, other limits",
        from pair in Pairs(guide.Checks.All.SelectMany(c => c.Readings.Where(r => r.Over is null).Select(r => new Statement(c, Key(r), Text(r)))))
        select (ImmutableArray<object?>)[pair.First.Matter, pair.First.Path, pair.First.Said, pair.Second.Path, pair.Second.Said]);

    static EvidenceTable Torques(GuideContent guide) => EvidenceTable.Of(
        "torques-differ",
        "The same bolt with different torques",
        "bolt, page, torque, other page, other torque",
        from pair in Pairs(guide.HandsOnPages.SelectMany(Torques))
        select (ImmutableArray<object?>)[pair.First.Matter, pair.First.Path, pair.First.Said, pair.Second.Path, pair.Second.Said]);

    static EvidenceTable Drive(GuideContent guide) => EvidenceTable.Of(
        "drive-differs",
        "Faults that say stop or drive to safety only, shown more than rarely by a symptom that lets the owner drive",
        "fault, fault says, symptom, symptom says",
        from fault in guide.Faults.All
        where fault.Drive.Value <= DriveAdvice.ToSafety
        from sign in fault.Symptoms
        where sign.Value.Value.Value > Likelihood.Words["rarely"]
        let symptom = guide.Symptoms.Find(sign.Key.Value)
        where symptom is not null && symptom.Drive.Value - fault.Drive.Value >= 2
        select (ImmutableArray<object?>)[fault.Origin.Slug, DriveWords.Key(fault.Drive.Value), symptom.Origin.Slug, DriveWords.Key(symptom.Drive.Value)]);

    /// <param name="Matter">What is spoken of.</param>
    /// <param name="Said">What the page says of it.</param>
    sealed record Statement(IGuideEntry Page, string Matter, string Said)
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
