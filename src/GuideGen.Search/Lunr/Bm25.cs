namespace GuideGen.Search.Lunr;

/// <summary>
/// Okapi BM25 (Robertson and Zaragoza, "The probabilistic relevance framework: BM25 and beyond", 2009), in the form and
/// with the constants that lunr.js 2.3.9 has by default. The order of the operations is part of the contract: the browser
/// computes the same numbers again (search.js) and both must round alike.
/// </summary>
static class Bm25
{
    public const double K1 = 1.2;
    public const double B = 0.75;

    /// <param name="matches">In how many field texts the term stands: a document counts once for each of its fields.</param>
    /// <param name="documents">How many documents the index holds.</param>
    public static double InverseDocumentFrequency(int matches, int documents) =>
        Math.Log(1 + Math.Abs((documents - matches + 0.5) / (matches + 0.5)));

    /// <summary>The part of a score's divisor that a field text's length decides.</summary>
    public static double LengthNorm(int length, double averageLength) => K1 * (1 - B + B * (length / averageLength));

    /// <summary>Score of one term in one field text, in whole thousandths, half rounded up as a script's Math.round does.</summary>
    public static long Thousandths(double idf, int frequency, double lengthNorm, double boost)
    {
        var score = idf * ((K1 + 1) * frequency) / (lengthNorm + frequency) * boost * 1000;
        var floor = Math.Floor(score);
        return (long)floor + (score - floor >= 0.5 ? 1 : 0);
    }
}
