using System.Text.Json;
using GuideGen.Guide.Findings;

namespace GuideGen.Tests;

public sealed class RulesTests
{
    [Fact]
    public void Every_rule_is_listed_once_under_what_it_is_about()
    {
        var run = Tool.Run(Path.GetTempPath(), "rules");

        Assert.Equal(0, run.Code);
        var ids = run.Out.Split('\n').Where(l => l.StartsWith("  ", StringComparison.Ordinal)).Select(l => l.Trim().Split(' ')[0]);
        Assert.Equal(Rules.All.Select(r => r.Id), ids.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_rule_is_explained_with_why_and_what_to_write()
    {
        var run = Tool.Run(Path.GetTempPath(), "rules", "key-unknown");

        Assert.Equal(
            """
            key-unknown: A key that is not known (error)

            A misspelt key would be left out in silence, and what it says would be missing from the page.

            Bad, in content/faults/hose-split.md:
                drvie: gently

            Good, in content/faults/hose-split.md:
                drive: gently

            """.ReplaceLineEndings("\n"),
            run.Out.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_rule_says_when_it_weighs_more_and_where_lines_are_left_out()
    {
        var run = Tool.Run(Path.GetTempPath(), "rules", "hazard-undeclared");

        Assert.Contains("(warning, error if the hazard is grave, can be dismissed with a reason)", run.Out, StringComparison.Ordinal);
        Assert.EndsWith(
            """
            Good, in content/tasks/clear-codes.md:
                minutes: 5
                hazards: [battery-12v]
                …
                A charging battery gives off gas: no flame near it, and cover your eyes.
                …
                2. Take the battery out.

            """.ReplaceLineEndings("\n"),
            run.Out.ReplaceLineEndings("\n"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_same_for_programs()
    {
        var run = Tool.Run(Path.GetTempPath(), "rules", "--format", "json");

        using var json = JsonDocument.Parse(run.Out);
        Assert.Equal(Rules.All.Length, json.RootElement.GetArrayLength());
        Assert.All(json.RootElement.EnumerateArray(), r => Assert.NotEmpty(r.GetProperty("why").GetString()!));
    }

    [Fact]
    public void A_rule_that_nobody_knows_is_wrong_usage()
    {
        var run = Tool.Run(Path.GetTempPath(), "rules", "key-unknwon");

        Assert.Equal((2, "", "guidegen: there is no rule 'key-unknwon'. Did you mean 'key-unknown'?\n"), (run.Code, run.Out, run.Error.ReplaceLineEndings("\n")));
    }
}
