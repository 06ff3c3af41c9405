using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>Evidence in words and as a plot. Counts come before percentages, and small numbers are said to be small.</summary>
static class EvidenceView
{
    // A long list of causes without a report tells nothing; the cards above name them.
    const int FewestRows = 4;
    const int VainRows = 6;

    public static ScriptObject? Of(ViewContext view, SignEvidence? evidence)
    {
        if (evidence is null) return null;
        var summary = evidence.Summary;
        var shown = summary.Causes.Where((c, i) => i < FewestRows || c.Reports.Count > 0).ToList();
        return new ScriptObject
        {
            ["total"] = summary.Posterior.Cases,
            ["lead"] = Lead(view, summary),
            ["rows"] = new ScriptArray(shown.Select((c, i) => Row(view, c, i == 0 ? null : shown[i - 1]))),
            ["hidden"] = summary.Causes.Length - shown.Count,
            ["reports"] = summary.Posterior.Cases < Wording.PercentageFrom ? new ScriptArray(evidence.Reports.Select(r => Report(view, r))) : [],
            ["others"] = summary.Causes.Sum(c => c.ByLevel[(int)ProofLevel.Claimed] + c.ByLevel[(int)ProofLevel.Probable]),
            ["worth"] = view.Number(Math.Round(summary.Posterior.Worth, 1)),
            ["variants"] = evidence.Variants.Length > 1 ? new ScriptArray(evidence.Variants.Select(v => VariantLine(view, v.Key, v.Value))) : [],
            ["vain"] = Vain(view, evidence.Vain),
        };
    }

    public static ScriptObject Of(ViewContext view, Fault fault)
    {
        var evidence = view.Guide.Evidence.Of(fault);
        return new ScriptObject
        {
            ["total"] = evidence.Cases,
            ["levels"] = new ScriptArray(Enum.GetValues<ProofLevel>().Reverse().Where(l => evidence.ByLevel[(int)l] > 0).Select(l => new ScriptObject
            {
                ["level"] = Key(l),
                ["count"] = evidence.ByLevel[(int)l],
            })),
            ["rows"] = new ScriptArray(Signs(view, fault)),
            ["minutes"] = Median(view, evidence.Minutes, view.Minutes),
            ["spend"] = Median(view, evidence.Spend, m => $"{view.Number(Math.Round(m))} {view.Guide.Vehicle.Currency.Value}"),
            ["vain"] = Vain(view, evidence.Vain),
        };
    }

    /// <summary>The key of the theme's words for a level.</summary>
    public static string Key(ProofLevel level) => level.ToString().ToLowerInvariant();

    static string? Lead(ViewContext view, EvidenceSummary summary)
    {
        var causes = summary.Causes;
        if (summary.Posterior.Cases == 0 || causes.Length < 2) return null;
        return Wording.OfOrder(causes[0].AboveNext!.Value) == OrderWording.Clear
            ? view.Fill("evidence.clear", Name(view, causes[0].Id))
            : view.Fill("evidence.level-lead", Name(view, causes[0].Id), Name(view, causes[1].Id));
    }

    static ScriptObject Row(ViewContext view, CauseEvidence cause, CauseEvidence? above)
    {
        var row = Share(view, cause, Name(view, cause.Id));
        var fault = view.Guide.Faults.Find(cause.Id);
        row["name"] = Name(view, cause.Id);
        row["href"] = fault is null ? null : view.Links.Of(fault);
        row["is_level"] = cause.Reports.Total > 0 && above?.AboveNext is { } chance && Wording.OfOrder(chance) == OrderWording.AboutLevel;
        return row;
    }

    /// <summary>How often it is this fault with the sign by which owners found it most often; null for a fault without signs.</summary>
    public static ScriptObject? Often(ViewContext view, Fault fault) =>
        SignsOf(view, fault).OrderByDescending(s => s.Cause.Reports.Count).ThenByDescending(s => s.Cause.Mean).FirstOrDefault() is { Cause: not null } most
            ? new ScriptObject { ["name"] = most.Name, ["href"] = most.Href, ["words"] = InWords(view, most.Cause) }
            : null;

    /// <summary>How often this fault was behind each of its signs, where there are reports.</summary>
    static IEnumerable<ScriptObject> Signs(ViewContext view, Fault fault) =>
        SignsOf(view, fault).Where(s => s.Cause.Reports.Total > 0).Select(s =>
        {
            var row = Share(view, s.Cause, s.Name);
            row["name"] = s.Name;
            row["href"] = s.Href;
            return row;
        });

    static IEnumerable<(string Name, string? Href, CauseEvidence Cause)> SignsOf(ViewContext view, Fault fault)
    {
        var codes = fault.Codes.Select(c => Sign(c.Key.Value.ToString(), view.Links.ToCode(c.Key.Value), view.Guide.Evidence.Of(c.Key.Value)!));
        var symptoms = fault.Symptoms.Select(s => view.Guide.Symptoms.Find(s.Key.Value)!)
            .Select(s => Sign(s.Name.Value, view.Links.Of(s), view.Guide.Evidence.OfSymptom(s.Origin.Slug)!));
        return codes.Concat(symptoms);

        (string Name, string? Href, CauseEvidence Cause) Sign(string name, string? href, SignEvidence evidence) =>
            (name, href, evidence.Summary.Causes.Single(c => c.Id == fault.Origin.Slug));
    }

    static ScriptObject Share(ViewContext view, CauseEvidence cause, string about)
    {
        var words = InWords(view, cause);
        var together = Frequency(view, cause.Mean);
        return new ScriptObject
        {
            ["words"] = words,
            ["opinion"] = cause.Opinion is { } opinion ? Frequency(view, opinion.Mean) : null,
            ["together"] = cause.Reports.Total > 0 && cause.Opinion is not null ? together : null,
            ["plot"] = new ScriptObject
            {
                ["title"] = about,
                ["desc"] = words + (cause.Reports.Total > 0 && cause.Opinion is not null ? " " + view.Fill("evidence.together", together) : ""),
                ["low"] = cause.Wording is ShareWording.TooFew ? null : Percent(cause.Share?.Low),
                ["width"] = Percent(cause.Share?.Width),
                ["share"] = cause.Wording is ShareWording.Few or ShareWording.Plain or ShareWording.NoneSoFar ? Percent(cause.Reports.Share) : null,
                ["opinion"] = Percent(cause.Opinion?.Mean),
            },
        };
    }

    static string InWords(ViewContext view, CauseEvidence cause)
    {
        var (count, total) = (Text(cause.Reports.Count), Text(cause.Reports.Total));
        var (low, high) = (Whole(cause.Share?.Low), Whole(cause.Share?.High));
        return cause.Wording switch
        {
            ShareWording.NoReports => view.Words["evidence.no-reports"],
            ShareWording.AuthorsEstimate => view.Fill("evidence.estimate-only", Frequency(view, cause.Mean)),
            ShareWording.TooFew => view.Count("evidence.too-few", cause.Reports.Total, count, total),
            ShareWording.NoneSoFar => view.Count("evidence.none-so-far", cause.Reports.Total, total, high),
            ShareWording.Few => view.Fill("evidence.few", count, total, low, high),
            ShareWording.Plain => view.Fill("evidence.plain", count, total, low, high),
            _ => throw new ArgumentOutOfRangeException(nameof(cause)),
        };
    }

    static string Frequency(ViewContext view, double probability)
    {
        var (count, of) = Wording.Frequency(probability);
        return view.Fill("evidence.frequency", Text(count), Text(of));
    }

    static ScriptObject Report(ViewContext view, SolvedCase solved) => new()
    {
        ["date"] = view.Date(solved.Date.Value),
        ["variant"] = view.VariantName(solved.Variant.Value),
        ["distance"] = view.Distance(solved.Distance.Value),
        ["level"] = Key(view.Guide.Evidence.LevelOf(solved)),
        ["name"] = Name(view, solved.Found.Value),
        ["href"] = view.Links.Of(view.Guide.Faults.Find(solved.Found.Value)!),
    };

    static string VariantLine(ViewContext view, string variant, EvidenceSummary summary)
    {
        var most = summary.Causes.MaxBy(c => c.Reports.Count)!;
        var (name, total) = (view.VariantName(variant), Text(summary.Posterior.Cases));
        return most.Reports.Count == 0
            ? view.Fill("evidence.variant-none", name)
            : view.Fill("evidence.variant", name, Text(most.Reports.Count), total, Name(view, most.Id));
    }

    static string? Median(ViewContext view, MedianOfReports? reports, Func<double, string> unit) => reports switch
    {
        null => null,
        { Interval: { } range } => view.Fill("evidence.median", unit(reports.Median), unit(range.Low), unit(range.High), Text(reports.Values.Length)),
        _ => view.Fill("evidence.values", string.Join(", ", reports.Values.Select(unit))),
    };

    static ScriptArray Vain(ViewContext view, ImmutableArray<VainAttempt> attempts) =>
    [
        .. attempts.Take(VainRows).Select(v => new ScriptObject
        {
            ["name"] = v.Part is { } part ? view.Guide.Parts.Find(part)!.Name.Value : v.What,
            ["href"] = v.Part is { } linked ? view.Links.Of(view.Guide.Parts.Find(linked)!) : null,
            ["times"] = v.Times,
            ["spend"] = v.Spend > 0 ? $"{view.Number(v.Spend)} {view.Guide.Vehicle.Currency.Value}" : null,
            ["minutes"] = v.Minutes > 0 ? view.Minutes(v.Minutes) : null,
        }),
    ];

    static string Name(ViewContext view, string id) =>
        id == WeightedCause.SomethingElse ? view.Words["evidence.else"] : view.Guide.Faults.Find(id)!.Name.Value;

    static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    static string? Percent(double? share) => share is { } s ? Math.Round(s * 100, 1).ToString(CultureInfo.InvariantCulture) : null;

    static string Whole(double? share) => Math.Round((share ?? 0) * 100).ToString("0", CultureInfo.InvariantCulture);
}
