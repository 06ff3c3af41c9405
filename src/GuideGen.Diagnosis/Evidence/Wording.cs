namespace GuideGen.Diagnosis.Evidence;

/// <summary>How a share may be worded. Closed: the site has words for each kind and no others.</summary>
public enum ShareWording
{
    /// <summary>No reports and no opinion: nothing is said of how common it is.</summary>
    NoReports,

    /// <summary>The author's estimate, named as one.</summary>
    AuthorsEstimate,

    /// <summary>Too few reports for a percentage: they are counted out.</summary>
    TooFew,

    /// <summary>No report of this cause among enough reports: 'up to about', from the upper limit; never 'never'.</summary>
    NoneSoFar,

    /// <summary>Counts and interval, with the word 'few'.</summary>
    Few,

    /// <summary>Counts and interval.</summary>
    Plain,
}

/// <summary>Whether an order of causes may be called certain.</summary>
public enum OrderWording
{
    /// <summary>P(this &gt; next) reaches <see cref="Wording.CertainFrom"/>.</summary>
    Clear,
    AboutLevel,
}

/// <summary>
/// Numbers may not sound surer than they are. Bounds are common practice for small samples, no source.
/// </summary>
public static class Wording
{
    public const int PercentageFrom = 5;
    public const int PlainFrom = 20;
    public const double CertainFrom = 0.9;

    /// <param name="reports">Confirmed reports of this cause among all that count.</param>
    /// <param name="opinion">Whether the author has an opinion about this cause.</param>
    public static ShareWording Of(Proportion reports, bool opinion) => reports.Total switch
    {
        0 => opinion ? ShareWording.AuthorsEstimate : ShareWording.NoReports,
        < PercentageFrom => ShareWording.TooFew,
        _ when reports.Count == 0 => ShareWording.NoneSoFar,
        < PlainFrom => ShareWording.Few,
        _ => ShareWording.Plain,
    };

    public static OrderWording OfOrder(double chanceAbove) =>
        chanceAbove >= CertainFrom ? OrderWording.Clear : OrderWording.AboutLevel;

    /// <summary>
    /// A probability as so many of ten such cases, or of a hundred where ten would say none or all.
    /// Never 0 or all of them: nothing here is certain.
    /// </summary>
    public static (int Count, int Of) Frequency(double probability)
    {
        int tenths = (int)Math.Round(probability * 10, MidpointRounding.AwayFromZero);
        if (tenths is > 0 and < 10)
            return (tenths, 10);
        return (Math.Clamp((int)Math.Round(probability * 100, MidpointRounding.AwayFromZero), 1, 99), 100);
    }
}
