namespace GuideGen.Browser.Tests;

/// <summary>Weighing the causes beside the vehicle: choose, paste, tick, see, and send the link on.</summary>
public sealed class WeighTests(BrowserHouse house)
{
    const string Known = "weigh.html#w1;v=w20d;c=P0101.P0299;s=reduced-power;a=black-smoke";
    const string Causes = ".weighed h3";

    public static TheoryData<string> Places => new(BrowserHouse.Places);

    [Theory, MemberData(nameof(Places))]
    public async Task Codes_and_symptoms_rank_the_causes_and_the_link_opens_the_same(string from)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("weigh.html");
        await visit.Page.GetByText("2.0 turbo-diesel", new() { Exact = true }).ClickAsync();
        await visit.Page.FillAsync("#_weigh-code", "Stored DTCs: P0299, P0101;");
        await visit.Page.Locator("#_weigh .add-code button").ClickAsync();
        await visit.Page.Locator("#_weigh-codes fieldset").Nth(1).WaitForAsync();
        await visit.Page.GetByText("It drives otherwise").ClickAsync();
        await Answer(visit, "reduced-power", "present");
        await visit.Page.GetByText("Something you see").ClickAsync();
        await Answer(visit, "black-smoke", "absent");
        var causes = await visit.Page.Locator(Causes).AllInnerTextsAsync();
        var shares = await visit.Page.Locator(".often").AllInnerTextsAsync();

        Assert.Equal(Known, visit.Address);
        Assert.Equal("Charge-air hose split or off", causes[0]);
        Assert.Contains("Something else", causes);

        await using var other = await house.Visit(from);
        await other.Open(Known);
        await other.Page.Locator(Causes).First.WaitForAsync();
        Assert.Equal(causes, await other.Page.Locator(Causes).AllInnerTextsAsync());
        Assert.Equal(shares, await other.Page.Locator(".often").AllInnerTextsAsync());
        Assert.True(await other.Page.Locator("input[name='black-smoke'][value='absent']").IsCheckedAsync());
        visit.IsClean();
        other.IsClean();
    }

    [Fact]
    public async Task What_a_check_shows_changes_the_list_and_can_be_taken_back()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("weigh.html#w1;v=w20d;c=P0299");
        await visit.Page.Locator(Causes).First.WaitForAsync();
        var before = await visit.Page.Locator(".often").AllInnerTextsAsync();
        await visit.Page.Locator(".outcomes .button").First.ClickAsync();

        Assert.Contains(";o=", visit.Address, StringComparison.Ordinal);
        Assert.NotEqual(before, await visit.Page.Locator(".often").AllInnerTextsAsync());

        await visit.Page.Locator(".done .button").ClickAsync();
        Assert.Equal("weigh.html#w1;v=w20d;c=P0299", visit.Address);
        Assert.Equal(before, await visit.Page.Locator(".often").AllInnerTextsAsync());
        visit.IsClean();
    }

    [Fact]
    public async Task The_keyboard_alone_is_enough()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("weigh.html");
        await visit.Page.FocusAsync("#_weigh-code");
        await visit.Page.Keyboard.TypeAsync("po299");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Locator(Causes).First.WaitForAsync();
        Assert.Equal("weigh.html#w1;c=P0299", visit.Address);

        await visit.Page.FocusAsync("input[name='P0299'][value='present']");
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("weigh.html#w1;n=P0299", visit.Address);
        visit.IsClean();
    }

    [Fact]
    public async Task A_report_and_a_code_lead_to_weighing_with_what_they_know()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("report.html#text=" + Uri.EscapeDataString("P0299 confirmed, P0101 pending"));
        await visit.Follow(visit.Page.Locator("#_report-weigh a"), "weigh.html#w1;c=P0101.P0299");
        await visit.Page.Locator(Causes).First.WaitForAsync();

        await visit.Open("codes/p0299.html");
        await visit.Follow(visit.Page.Locator("main a[href*='weigh.html']"), "weigh.html#w1;c=P0299");
        await visit.Page.Locator(Causes).First.WaitForAsync();
        visit.IsClean();
    }

    [Fact]
    public async Task A_hostile_link_opens_an_empty_page()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("weigh.html#w1;v=x;s=nothing.<img src=x>;o=a:b;t=none;c=javascript");
        await visit.Page.Locator("#_weigh").WaitForAsync();

        Assert.False(await visit.Page.Locator("#_weigh-result").IsVisibleAsync());
        Assert.Equal("weigh.html", visit.Address);
        visit.IsClean();
    }

    [Fact]
    public async Task Without_script_the_page_leads_to_the_same_causes()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { JavaScriptEnabled = false });
        await visit.Open("weigh.html");

        foreach (var address in new[] { "codes.html", "symptoms.html", "trees.html" }) Assert.True(await visit.Page.Locator($"noscript a[href='{address}']").CountAsync() + await visit.Page.Locator($".lead a[href='{address}']").CountAsync() > 0);
        Assert.False(await visit.Page.Locator("#_weigh").IsVisibleAsync());
        visit.IsClean();
    }

    // The radio buttons lie under their labels, as a thumb finds them.
    static Task Answer(Visit visit, string symptom, string answer) =>
        visit.Page.Locator($"label:has(input[name='{symptom}'][value='{answer}'])").ClickAsync();
}
