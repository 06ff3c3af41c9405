namespace GuideGen.Diagnosis.Money;

/// <summary>
/// Whether to test a part before buying it (threshold reasoning of S. Pauker, J. Kassirer 1980, NEJM 302:1109-1117).
/// Only for money: where safety or a warranty is concerned, test.
/// </summary>
/// <param name="TestCost">What the test costs, own time included.</param>
/// <param name="ReplacementCost">What is lost when the part was good.</param>
/// <param name="ChanceFaulty">How likely the part is the fault, 0 to 1.</param>
public sealed record TestOrReplace(double TestCost, double ReplacementCost, double ChanceFaulty)
{
    /// <summary>Test while this is more than the test costs: what replacing untested loses on average.</summary>
    public double LossUntested => (1 - ChanceFaulty) * ReplacementCost;

    public bool TestFirst => TestCost < LossUntested;

    /// <summary>Above this chance the part may be replaced untested; never below 0.</summary>
    public double ReplaceAbove => Math.Max(0, 1 - TestCost / ReplacementCost);

    /// <summary>How likely the part is faulty after a test that can err.</summary>
    /// <param name="sensitivity">P(test says faulty | faulty).</param>
    /// <param name="specificity">P(test says good | good).</param>
    /// <param name="saysFaulty">What it said.</param>
    public double ChanceAfter(double sensitivity, double specificity, bool saysFaulty)
    {
        double faulty = ChanceFaulty * (saysFaulty ? sensitivity : 1 - sensitivity);
        double good = (1 - ChanceFaulty) * (saysFaulty ? 1 - specificity : specificity);
        return faulty / (faulty + good);
    }
}
