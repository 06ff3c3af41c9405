using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Tests.Rows;

namespace GuideGen.Guide.Tests;

/// <summary>Every rule is explained, and the examples are true: they are laid over the base guide and inspected.</summary>
public sealed class RuleExplanationTests
{
    /// <summary>Their examples cannot be shown as text; FileTests and PhotoTests break them with bytes.</summary>
    static readonly string[] Told = ["file-changed", "file-linked", "file-too-large", "file-unreadable", "image-broken", "image-large", "image-position", "text-control", "text-encoding"];

    public static TheoryData<string> Shown => new(RuleExplanations.All.Keys.Except(Told).Except(ShownRules.OfLaterStages).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_rule_has_a_why_a_bad_and_a_good_example()
    {
        var lacking = Rules.All.Select(r => $"{r.Id}: {Lack(r.Id)}").Where(l => !l.EndsWith(": ", StringComparison.Ordinal));

        Assert.True(!lacking.Any(), $"add to src/GuideGen.Guide/Findings/Explained: {string.Join("; ", lacking)}");
    }

    [Fact]
    public void Nothing_is_explained_that_is_no_rule() => Assert.Empty(RuleExplanations.All.Keys.Except(Rules.All.Select(r => r.Id)));

    [Fact]
    public void Only_what_cannot_be_shown_is_told_in_words() =>
        Assert.Equal(Told, RuleExplanations.All.Values.Where(e => e.Bad.Concat(e.Good).Any(x => x.Form == ExampleForm.Told)).Select(e => e.Id).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Shown))]
    public void The_bad_example_breaks_the_rule(string id) =>
        Assert.Contains(id, Findings(RuleExplanations.All[id].Bad).Select(f => f.Rule.Id));

    [Theory, MemberData(nameof(Shown))]
    public void The_good_example_breaks_no_rule(string id)
    {
        Assert.All(RuleExplanations.All[id].Good, e => Assert.NotEmpty(e.Shown));
        Assert.Equal("", RowFile.Print(Findings(RuleExplanations.All[id].Good)));
    }

    static string Lack(string id)
    {
        if (!RuleExplanations.All.TryGetValue(id, out var explanation)) return "an explanation";
        if (explanation.Why.Length < 40) return "a why";
        if (explanation.Bad.IsEmpty) return "a bad example";
        return explanation.Good.IsEmpty ? "a good example" : "";
    }

    static IReadOnlyList<Finding> Findings(ImmutableArray<RuleExample> examples) => BaseGuide.Inspect(ShownRules.Over(BaseGuide.Files(), examples));
}
