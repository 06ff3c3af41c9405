namespace GuideGen.Site.Tests.Compiling;

/// <summary>What a fault page says of money, from prices and the workshop's bill in the guide.</summary>
public sealed class MoneyTests
{
    const string Page = "faults/charge-air-hose-split.html";

    // Worked by hand: parts 38 to 85, 1.2 h at 95: (1.2 x 95 + 38) to (1.2 x 95 + 85).
    [Fact]
    public void A_bill_of_labour_and_parts_says_what_it_leaves_out()
    {
        var page = Text(new(Guides.Open(Guides.Small)));

        Assert.Contains("1.2 h, 152 to 199 EUR", page, StringComparison.Ordinal);
        Assert.Contains("finding the fault, a mark-up and tax come on top", page, StringComparison.Ordinal);
    }

    // Worked by hand: 1.19 x ((1 + 1.2) x 95 + 1.35 x 38) = 309.757 to 1.19 x (209 + 1.35 x 85) = 385.2625.
    [Fact]
    public void A_bill_counts_diagnosis_mark_up_and_tax()
    {
        var page = Text(new Overlay(Guides.Open(Guides.Small)).Append(
            "content/vehicle.yml", "\nworkshop-bill: { diagnosis-hours: 1, parts-markup: 35, tax: 19 }\n"));

        Assert.Contains("2.2 h, 310 to 385 EUR", page, StringComparison.Ordinal);
        Assert.Contains("counts 1 h for finding the fault, 35 % on top of the price of parts, and 19 % tax", page, StringComparison.Ordinal);
    }

    static string Text(Overlay guide) => CompiledSite.Compile(guide, 1).Pages[Page].Document.Body!.TextContent;
}
