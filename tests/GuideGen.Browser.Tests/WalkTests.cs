using GuideGen.Testing;
using Microsoft.Playwright;

namespace GuideGen.Browser.Tests;

/// <summary>Trees are walked to every end, with script: one step at a time.</summary>
public sealed class WalkTests(BrowserHouse house)
{
    const string Small = "trees/no-cold-air.html";

    static readonly string Walker = File.ReadAllText(Repository.PathTo("tests", "GuideGen.Browser.Tests", "walker.js"));

    [Fact]
    public async Task Every_leaf_of_every_tree_is_come_to()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ViewportSize = new() { Width = 390, Height = 800 } });
        var wrong = new List<string>();
        var leaves = 0;
        foreach (var address in BrowserHouse.AddressesOf("trees"))
        {
            await visit.Open(address);
            await Begun(visit);
            var said = await visit.Page.EvaluateAsync<string[]>(Walker);
            Assert.Equal("true", said[0]);
            leaves += int.Parse(said[1], System.Globalization.CultureInfo.InvariantCulture);
            wrong.AddRange(said.Skip(2).Select(s => $"{address}: {s}"));
        }

        Assert.Empty(wrong);
        Assert.True(leaves > 200, $"{leaves} leaves");
        visit.IsClean();
    }

    // By night a quarter is enough: what differs then is the colours, which all trees share.
    [Theory, InlineData(ColorScheme.Light, 1), InlineData(ColorScheme.Dark, 4)]
    public async Task The_pages_of_trees_are_accessible(ColorScheme scheme, int each)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile, new() { ColorScheme = scheme, ViewportSize = new() { Width = 390, Height = 800 } });
        var wrong = new List<string>();
        foreach (var address in BrowserHouse.AddressesOf("trees").Where((_, i) => i % each == 0))
        {
            await visit.Open(address);
            await Begun(visit);
            await visit.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
            wrong.AddRange((await Axe.Violations(visit.Page, "main")).Select(v => $"{v} ({address})"));
        }

        Axe.IsContent(wrong);
        visit.IsClean();
    }

    [Fact]
    public async Task A_link_carries_the_walk_to_a_friend()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open(Small);
        await Begun(visit);
        await visit.Page.Locator(".step:visible .ways a").Nth(1).ClickAsync();
        var here = await visit.Page.Locator(".step:visible").GetAttributeAsync("id");
        var address = visit.Address;

        await using var friend = await house.Visit(BrowserHouse.FromServer);
        await friend.Open(address);
        await Begun(friend);

        Assert.Equal(here, await friend.Page.Locator(".step:visible").GetAttributeAsync("id"));
        Assert.Equal(1, await friend.Page.Locator("#_walk-trail li").CountAsync());
    }

    [Fact]
    public async Task A_walk_goes_on_after_the_page_was_closed_and_goes_back_without_loss()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open(Small);
        await Begun(visit);
        await visit.Page.Locator(".step:visible .ways a").Nth(1).ClickAsync();
        var here = await visit.Page.Locator(".step:visible").GetAttributeAsync("id");
        await visit.Open("index.html");

        await visit.Open(Small);
        await Begun(visit);
        Assert.Equal(here, await visit.Page.Locator(".step:visible").GetAttributeAsync("id"));
        await visit.Page.ClickAsync("#_walk-back");
        Assert.NotEqual(here, await visit.Page.Locator(".step:visible").GetAttributeAsync("id"));
        await visit.Page.ClickAsync("#_walk-ahead");
        Assert.Equal(here, await visit.Page.Locator(".step:visible").GetAttributeAsync("id"));
        visit.IsClean();
    }

    [Theory]
    [InlineData("#walk=000000/0.0.0//")]
    [InlineData("#walk=zzzzzz/999/<script>/0")]
    [InlineData("#walk=")]
    [InlineData("#%E0%A4%A")]
    public async Task A_hostile_address_begins_at_the_start(string hash)
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open(Small + hash);
        await Begun(visit);

        Assert.Equal(0, await visit.Page.Locator("#_walk-trail li").CountAsync());
        Assert.Equal(1, await visit.Page.Locator(".step:visible").CountAsync());
        visit.IsClean();
    }

    [Fact]
    public async Task The_record_holds_the_date_the_vehicle_and_the_answers()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Open(Small);
        await Begun(visit);
        await visit.Page.EvaluateAsync("() => { window.print = () => {}; document.querySelectorAll('details').forEach(d => d.open = true); }");
        await visit.Page.Locator(".step:visible .ways a").Nth(1).ClickAsync();
        await visit.Page.FillAsync("#_walk-vehicle", "Loris 2016");
        await visit.Page.FillAsync("#_walk-odometer", "123456");
        await visit.Page.ClickAsync("#_walk-print");

        var paper = await visit.Page.Locator("#_walk-paper").InnerTextAsync();
        Assert.Contains("Loris 2016", paper, StringComparison.Ordinal);
        Assert.Contains("123456", paper, StringComparison.Ordinal);
        Assert.Contains("Air is there, cold is missing", paper, StringComparison.Ordinal);
        Assert.Matches(@"Date: \d{4}-\d{2}-\d{2}", paper);
    }

    static Task Begun(Visit visit) => visit.Page.Locator("body.walking").WaitForAsync();
}
