using GuideGen.Site.Rendering;

namespace GuideGen.Browser.Tests;

/// <summary>What depends on the language of a guide.</summary>
public sealed class LanguageTests(BrowserHouse house)
{
    /// <summary>Intl.PluralRules of Chromium, which has them from ICU and so from the Unicode CLDR, is the reference.</summary>
    [Fact]
    public async Task Plural_forms_are_those_of_the_browser()
    {
        await using var visit = await house.Visit(BrowserHouse.FromFile);
        await visit.Open("404.html");
        long[] numbers = [.. Enumerable.Range(0, 230).Select(n => (long)n), 1000, 1001, 1_000_000, 2_000_000, 1_000_001];
        var wrong = new List<string>();
        foreach (var language in PluralForms.Languages)
        {
            var forms = await visit.Page.EvaluateAsync<string[]>("([tag, numbers]) => numbers.map(n => new Intl.PluralRules(tag).select(n))", new object[] { language, numbers });
            wrong.AddRange(from at in numbers.Zip(forms) where PluralForms.Of(language, at.First) != at.Second select $"{language} {at.First}: {at.Second}, not {PluralForms.Of(language, at.First)}");
        }

        Assert.Empty(wrong);
        Assert.True(PluralForms.Languages.Count() > 40);
    }
}
