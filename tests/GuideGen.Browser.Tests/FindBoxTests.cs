using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>The search box of every page: a code however it is typed, a word of the trade or of every day, a pasted report.</summary>
public sealed class FindBoxTests(BrowserHouse house)
{
    const string Box = "#_find-box";
    const string Choices = "#_find-list li";
    const string Status = "#_find-status";

    static readonly string[] WaysToType = ["P0299", "p0299", "PO299", "p 0299", "P-0299", "P0299-00", "ECM: P0299 confirmed"];

    static readonly (string Typed, string Page)[] Words =
    [
        ("turbo hose", "parts/charge-air-hose.html"),
        ("whistle under load", "symptoms/whistle-under-load.html"),
        ("limp mode", "symptoms/reduced-power.html"),
        ("egr valve", "parts/egr-valve.html"),
        ("thermostat stuck open", "faults/thermostat-stuck-open.html"),
        ("clear codes", "tasks/clear-codes.html"),
        ("P0430", "codes/p04.html#p0430"),
        ("U0100", "codes/u0100.html"),
        ("P113", "codes/p0113.html"),
        ("glow plug", "parts/glow-plug.html"),
    ];

    static readonly (string Report, string[] Codes)[] Reports =
    [
        ("Stored DTCs: P0299, P0101;\nPending DTCs: P0401.", ["P0299", "P0101", "P0401"]),
        ("[ECM] P0299:00-AF\nABS: C0031-14\n", ["P0299-00", "C0031-14"]),
        ("7E8 10 0A 43 04 02 99 01 13\n7E8 21 04 01 20 02 00 00 00", ["P0299", "P0113", "P0401", "P2002"]),
    ];

    public static TheoryData<string, string> Typed => new(from place in BrowserHouse.Places from text in WaysToType select (place, text));

    public static TheoryData<string, string, string> Queries => new(from place in BrowserHouse.Places from w in Words select (place, w.Typed, w.Page));

    public static TheoryData<string, string, string[]> Pasted => new(from place in BrowserHouse.Places from r in Reports select (place, r.Report, r.Codes));

    [Theory, MemberData(nameof(Typed))]
    public async Task A_code_is_found_however_it_is_typed(string from, string text)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("index.html");
        await visit.Page.FillAsync(Box, text);

        Assert.Equal("codes/p0299.html", await First(visit));
        visit.IsClean();
    }

    [Theory]
    [InlineData("P02999")]
    [InlineData("0299")]
    [InlineData("X0299")]
    public async Task A_code_with_a_slip_offers_the_one_it_may_have_meant(string typed)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("index.html");
        await visit.Page.FillAsync(Box, typed);
        await visit.Page.Locator(Choices).First.WaitForAsync();

        Assert.Contains("codes/p0299.html", await visit.Page.Locator(Choices).EvaluateAllAsync<string[]>("all => all.map(c => c.dataset.href)"));
        visit.IsClean();
    }

    [Theory, MemberData(nameof(Queries))]
    public async Task A_query_finds_the_page_that_an_owner_means(string from, string text, string page)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("faults.html");
        await visit.Page.FillAsync(Box, text);

        Assert.Equal(page, await First(visit));
        visit.IsClean();
    }

    [Theory, MemberData(nameof(Pasted))]
    public async Task A_pasted_report_opens_as_a_list_of_its_codes(string from, string report, string[] codes)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("parts/charge-air-hose.html");
        await visit.Page.FocusAsync(Box);
        await visit.Page.EvaluateAsync(
            "text => { const data = new DataTransfer(); data.setData('text', text); document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true })); }", report);
        await visit.Page.Locator("#_report-result h3 code").Nth(codes.Length - 1).WaitForAsync();

        Assert.Equal(codes, await visit.Page.Locator("#_report-result h3 code").AllInnerTextsAsync());
        visit.IsClean();
    }

    [Fact]
    public async Task The_keyboard_alone_goes_to_the_box_chooses_and_opens()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("parts/charge-air-hose.html");
        await visit.Page.Keyboard.PressAsync("/");
        await visit.Page.Keyboard.TypeAsync("po299");
        await First(visit);
        Assert.Equal("true", await visit.Page.GetAttributeAsync(Box, "aria-expanded"));

        await visit.Page.Keyboard.PressAsync("ArrowDown");
        Assert.Equal("_find-0", await visit.Page.GetAttributeAsync(Box, "aria-activedescendant"));
        Assert.Equal("true", await visit.Page.GetAttributeAsync("#_find-0", "aria-selected"));
        await visit.Page.Keyboard.PressAsync("Escape");
        Assert.Equal("false", await visit.Page.GetAttributeAsync(Box, "aria-expanded"));

        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.IsAt("codes/p0299.html");
        visit.IsClean();
    }

    [Theory, InlineData(ColorScheme.Light), InlineData(ColorScheme.Dark)]
    public async Task The_open_box_is_accessible_with_results_with_a_choice_and_with_none(ColorScheme scheme)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ColorScheme = scheme, ViewportSize = new() { Width = 390, Height = 844 } });
        await visit.Open("index.html");
        await visit.Page.FillAsync(Box, "turbo hose");
        await First(visit);
        var wrong = (await Axe.Violations(visit.Page)).ToList();
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        wrong.AddRange(await Axe.Violations(visit.Page, "#_find"));
        await visit.Page.FillAsync(Box, "po299");
        await visit.Page.Locator(Choices + "[data-href*=p0299]").First.WaitForAsync();
        wrong.AddRange(await Axe.Violations(visit.Page, "#_find"));
        await visit.Page.FillAsync(Box, "termostat");
        await visit.Page.Locator(Status + ":not(:empty)").WaitForAsync();
        wrong.AddRange(await Axe.Violations(visit.Page, "#_find"));

        Axe.IsContent(wrong);
        visit.IsClean();
    }

    [Fact]
    public async Task What_is_not_found_is_said_as_text_and_never_becomes_markup()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("index.html");
        await visit.Page.FillAsync(Box, "<img src=x onerror=alert(1)>");
        await visit.Page.Locator(Status + ":not(:empty)").WaitForAsync();

        Assert.Contains("<img src=x onerror=alert(1)>", await visit.Page.InnerTextAsync(Status), StringComparison.Ordinal);
        Assert.Equal(0, await visit.Page.Locator("#_find img").CountAsync());
        visit.IsClean();
    }

    [Fact]
    public async Task A_mistyped_word_is_answered_with_the_nearest_words_of_the_guide()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("index.html");
        await visit.Page.FillAsync(Box, "termostat");
        await visit.Page.Locator(Status + ":not(:empty)").WaitForAsync();

        Assert.Contains("thermostat", await visit.Page.InnerTextAsync(Status), StringComparison.Ordinal);
        visit.IsClean();
    }

    [Fact]
    public async Task Nothing_of_the_search_is_loaded_before_it_is_used()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open("index.html");
        await visit.Page.WaitForLoadStateAsync(LoadState.Load);
        var scripts = await visit.Page.EvaluateAsync<string[]>("() => [...document.scripts].map(s => s.src.split('/').pop().replace(/[.][0-9a-f]{8}(?=[.])/, ''))");

        Assert.Equal(["load.js", "find.js", "offline.js"], scripts);
    }

    static async Task<string?> First(Visit visit) => await visit.Page.Locator(Choices).First.GetAttributeAsync("data-href");
}
