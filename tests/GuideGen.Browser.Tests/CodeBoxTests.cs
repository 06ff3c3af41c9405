namespace GuideGen.Browser.Tests;

/// <summary>The code box of the start page finds a code however it is typed.</summary>
public sealed class CodeBoxTests(BrowserHouse house)
{
    static readonly string[] WaysToType = ["P0299", "p0299", "PO299", "p 0299", "P-0299", "0299", "P0299-00", "ECM: P0299 confirmed"];

    public static TheoryData<string, string> Typed => new(from place in BrowserHouse.Places from text in WaysToType select (place, text));

    [Theory, MemberData(nameof(Typed))]
    public async Task A_code_is_found_however_it_is_typed(string from, string text)
    {
        await using var visit = await house.Visit(from);
        await visit.Open("index.html");
        await visit.Page.FillAsync("#code-box", text);

        Assert.Equal("codes/p0299.html", await visit.Page.Locator("#code-answer a").First.GetAttributeAsync("href"));
        visit.IsClean();
    }

    [Fact]
    public async Task Enter_opens_the_first_code_found()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("index.html");
        await visit.Page.FillAsync("#code-box", "po299");
        await visit.Page.PressAsync("#code-box", "Enter");
        await visit.Page.WaitForURLAsync("**/codes/p0299.html");

        visit.IsClean();
    }

    [Fact]
    public async Task What_is_not_found_is_said_as_text_and_never_becomes_markup()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("index.html");
        await visit.Page.FillAsync("#code-box", "<img src=x onerror=alert(1)>");
        var answer = visit.Page.Locator("#code-answer");

        Assert.Contains("<img src=x onerror=alert(1)>", await answer.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(0, await answer.Locator("img").CountAsync());
        visit.IsClean();
    }
}
