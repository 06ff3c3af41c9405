namespace GuideGen.Browser.Tests;

/// <summary>No kind of page breaks its content security policy or asks anybody else for anything, whatever is opened and typed there.</summary>
public sealed class PolicyTests(BrowserHouse house)
{
    const string Listen = "addEventListener('securitypolicyviolation', e => (window.broken ??= []).push(`${location.pathname}: ${e.effectiveDirective} ${e.blockedURI}`))";

    /// <summary>Opens what can be opened and ticks what can be ticked, so that whatever a page has to show is shown.</summary>
    const string OpenAll = "document.querySelectorAll('main details').forEach(d => d.open = true); document.querySelectorAll('main input[type=checkbox]').forEach(b => b.click())";

    public static TheoryData<string> Places => new(BrowserHouse.Places);

    [Theory, MemberData(nameof(Places))]
    public async Task Every_kind_of_page_keeps_its_policy_and_asks_nobody_else(string from)
    {
        await using var visit = await house.Visit(from);
        await visit.Page.AddInitScriptAsync(Listen);
        var broken = new List<string>();

        foreach (var address in house.ExtremesOfEveryKind())
        {
            await visit.Open(address);
            await visit.Page.EvaluateAsync(OpenAll);
            if (await visit.Page.Locator("#_find-box").IsVisibleAsync())
            {
                await visit.Page.FillAsync("#_find-box", "P0299 boost <b>");
                await visit.Page.Locator("#_find-list li").First.WaitForAsync();
            }

            broken.AddRange(await Broken(visit));
        }

        Assert.Empty(broken);
        visit.IsClean();
    }

    [Fact]
    public async Task What_a_page_must_not_do_is_stopped_and_seen()
    {
        await using var visit = await house.Visit(BrowserHouse.FromServer);
        await visit.Page.AddInitScriptAsync(Listen);
        await visit.Open("index.html");

        await visit.Page.EvaluateAsync("document.body.insertAdjacentHTML('beforeend', '<img src=\"https://elsewhere.example/x.png\" onerror=\"window.ran = true\"><iframe src=\"https://elsewhere.example/\"></iframe>')");
        await visit.Page.EvaluateAsync("document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.ran = true' }))");
        await visit.Page.WaitForFunctionAsync("(window.broken ?? []).length > 3");

        Assert.Equal(["frame-src", "img-src", "script-src-attr", "script-src-elem"], (await Broken(visit)).Select(b => b.Split(' ')[1]).Distinct().Order(StringComparer.Ordinal));
        Assert.False(await visit.Page.EvaluateAsync<bool>("!!window.ran"));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(visit.IsClean);
    }

    static Task<string[]> Broken(Visit visit) => visit.Page.EvaluateAsync<string[]>("window.broken ?? []");
}
