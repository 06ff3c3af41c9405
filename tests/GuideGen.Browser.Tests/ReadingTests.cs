namespace GuideGen.Browser.Tests;

/// <summary>The way of an owner through the guide, in a real browser.</summary>
public sealed class ReadingTests(BrowserHouse house)
{
    public static TheoryData<string> Places => new(BrowserHouse.Places);

    [Theory, MemberData(nameof(Places))]
    public async Task From_the_start_page_to_a_code_to_a_fault_and_back(string from)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("index.html");
        await visit.Page.FillAsync("#_find-box", "P0299");
        await visit.Follow(visit.Page.Locator("#_find-list li").First, "codes/p0299.html");
        await visit.Follow(visit.Page.Locator("main a[href='../faults/charge-air-hose-split.html']").First, "faults/charge-air-hose-split.html");
        Assert.Equal("Charge-air hose split or off", await visit.Page.Locator("h1").InnerTextAsync());

        await visit.Page.GoBackAsync();
        Assert.Equal("codes/p0299.html", visit.Address);
        await visit.Page.GoBackAsync();
        Assert.Equal("index.html", visit.Address);
        visit.IsClean();
    }

    [Theory, MemberData(nameof(Places))]
    public async Task A_tree_is_walked_without_script(string from)
    {
        await using var visit = await house.Visit(from, new() { JavaScriptEnabled = false });
        await visit.Open("index.html");
        await visit.Follow(visit.Page.Locator("main a[href='symptoms/reduced-power.html']").First, "symptoms/reduced-power.html");
        await visit.Follow(visit.Page.Locator("main a[href='../trees/reduced-power.html']").First, "trees/reduced-power.html");
        string[] answers = ["No, steady or off", "2.0 turbo-diesel", "Boost codes such as P0299 or P0234, or none of these", "Wet or dusty oil fan at a hose or clip"];
        var step = visit.Page.Locator("#lamp");
        foreach (var answer in answers)
        {
            var link = step.Locator("a[href^='#']", new() { HasText = answer }).First;
            var to = (await link.GetAttributeAsync("href"))![1..];
            await visit.Follow(link, "trees/reduced-power.html#" + to);
            step = visit.Page.Locator("#" + to);
            Assert.True(await step.IsVisibleAsync());
        }

        await visit.Follow(step.Locator("a[href='../faults/charge-air-hose-split.html']").First, "faults/charge-air-hose-split.html");
        visit.IsClean();
    }

    [Theory, MemberData(nameof(Places))]
    public async Task The_start_page_offers_all_codes_without_script(string from)
    {
        await using var visit = await house.Visit(from, new() { JavaScriptEnabled = false });
        await visit.Open("index.html");
        Assert.False(await visit.Page.Locator("#_find-box").IsVisibleAsync());

        await visit.Follow(visit.Page.Locator("main a[href='codes.html']"), "codes.html");
        await visit.Follow(visit.Page.Locator("main a[href='codes/p0299.html']"), "codes/p0299.html");
        visit.IsClean();
    }
}
