using System.Text.Json;

namespace GuideGen.Browser.Tests;

/// <summary>Links that somebody sent, reports that somebody pasted, and what somebody left in the browser: nothing of it acts.</summary>
public sealed class HostileAddressTests(BrowserHouse house)
{
    const string Call = "<img src=x onerror=window.hit=1><script>window.hit=1</script>";

    static readonly string[] Fragments =
    [
        "#" + Call, "#%3Cimg%20src=x%20onerror=window.hit=1%3E", "#javascript:window.hit=1", "#__proto__", "#constructor", "#_page\" onfocus=\"window.hit=1", "#%00", "#%", "#%E0%A4%A", "#" + new string('a', 100_000), "#:~:text=x", "#.", "#\u2028", "#text=", "#w1;",
    ];

    static readonly string[] Weighed =
    [
        "#w1;v=" + Call, "#w1;v=__proto__;c=P0299", "#w1;v=constructor;c=P0299", "#w1;c=P0299.P0299.<script>;s=__proto__.constructor.tostring", "#w1;o=constructor:constructor;c=P0299", "#w1;o=valueof:x;t=tostring;p=hasownproperty", "#w1;c=" + string.Join('.', Enumerable.Repeat("P0299", 1_300)), "#w1;s=no-such-sign;c=P0299", "#w1;constructor=x;c=P0299", "#w1;c=P0299;" + new string(';', 7_000), "#w1;c=p0299%00",
    ];

    static readonly string[] Walked =
    [
        "#walk=" + Call, "#walk=zzzzzz/0/constructor/0", "#walk=000000/999.999/__proto__/999", "#walk=000000///", "#walk=000000/" + string.Join('.', Enumerable.Repeat("0", 200)) + "//", "#walk=000000/1e9//", "#walk=000000/0/w20d/0/x", "#_walk-again", "#_walk-sure",
    ];

    static readonly string[] Reports =
    [
        Call, "P0299" + Call, "P0299 \"><svg onload=window.hit=1>", "{0} {1} P0299 $& $1", "__proto__ constructor P0299", new string('P', 20_000), string.Concat(Enumerable.Repeat("P0299 ", 3_000)), string.Concat(Enumerable.Repeat("7E8 10 FF 43 ", 1_500)), "\u202EP0299\u2028\u0000", "P0299\r\n" + new string('\n', 10_000), "javascript:window.hit=1//P0299",
    ];

    public static TheoryData<string> Addresses =>
    [
        .. Fragments.SelectMany(f => new[] { "report.html" + f, "weigh.html" + f, "trees/no-cold-air.html" + f }),
        .. Weighed.Select(f => "weigh.html" + f), .. Walked.Select(f => "trees/no-cold-air.html" + f),
        .. Reports.Select(r => "report.html#text=" + Uri.EscapeDataString(r)), "report.html#text=%", "report.html#text=%E0%A4",
        "report-a-case.html#f=constructor", "report-a-case.html#f=" + Call, "report-a-case.html#f=__proto__", "report-a-case.html#f=../../x",
        "index.html?" + Call, "weigh.html?x=1#w1;c=P0299", "codes.html?q=" + Call,
    ];

    [Theory, MemberData(nameof(Addresses))]
    public async Task A_link_from_anybody_opens_a_sound_page(string address)
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open(address);

        await AssertIsSound(visit);
    }

    [Theory, InlineData(BrowserHouse.FromFile), InlineData(BrowserHouse.FromServer)]
    public async Task A_pasted_report_is_text_wherever_it_is_shown(string from)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("report.html");
        foreach (var report in Reports)
        {
            await visit.Page.EvaluateAsync("text => { document.getElementById('_report-text').value = text; }", report);
            await visit.Page.Locator("#_report button").First.ClickAsync();
            await AssertIsSound(visit);
        }
    }

    public static TheoryData<string> Kept => new(
        "null", "[]", "\"x\"", "{", "1e999", "{\"hash\":{},\"seen\":-5,\"taken\":[[]],\"vehicle\":{},\"odometer\":[]}", "{\"__proto__\":{\"hit\":1},\"taken\":{\"__proto__\":\"x\",\"constructor\":\"y\"}}",
        "{\"vehicle\":\"<img src=x onerror=window.hit=1>\",\"odometer\":\"\\\"><script>window.hit=1</script>\",\"hash\":\"walk=000000/0//\"}", "{\"seen\":1e308,\"hash\":\"walk=zzzzzz/0.0.0//\"}", "{\"taken\":\"" + new string('x', 100_000) + "\"}");

    [Theory, MemberData(nameof(Kept))]
    public async Task What_was_left_in_the_browser_breaks_no_walk(string kept)
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Page.AddInitScriptAsync($"for (const key of ['walk:/club/guide/trees/no-cold-air.html', ...Object.keys(localStorage)]) localStorage.setItem(key, {JsonSerializer.Serialize(kept)});");
        await visit.Open("trees/no-cold-air.html");
        await visit.Page.Locator("[data-kind]:not([hidden]) a").First.ClickAsync();
        await visit.Page.ReloadAsync();

        await AssertIsSound(visit);
    }

    /// <summary>Nothing was called, nothing loaded from elsewhere, and no element stands there that the guide did not make.</summary>
    static async Task AssertIsSound(Visit visit)
    {
        await visit.Page.WaitForFunctionAsync("""
            () => /on-(weigh|tree)/.test(document.body.className) ? !!(GuideGen.data && GuideGen.data.site && GuideGen.data.site.words)
              : document.getElementById("_report-text")?.value.trim() ? document.getElementById("_report-status").textContent !== "" : true
            """);
        var found = await visit.Page.EvaluateAsync<string>("""
            () => JSON.stringify([
              window.hit === undefined && ({}).hit === undefined,
              document.querySelectorAll("h1").length === 1,
              [...document.scripts].every(s => s.src.startsWith(new URL("assets/", GuideGen.base).href) || s.src.startsWith(new URL("data/", GuideGen.base).href)),
              document.querySelectorAll("[onerror], [onload], [onclick], [onfocus], iframe, object, embed, base, img[src=x]").length === 0,
              [...document.querySelectorAll("a[href]")].every(a => /^(https?|file|mailto):$/.test(new URL(a.getAttribute("href"), document.baseURI).protocol)),
            ])
            """);
        Assert.Equal("[true,true,true,true,true]", found);
        visit.IsClean();
    }
}
