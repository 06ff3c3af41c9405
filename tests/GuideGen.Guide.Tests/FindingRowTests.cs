using GuideGen.Guide.Findings;
using GuideGen.Guide.Tests.Rows;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

public sealed class FindingRowTests
{
    static readonly Dictionary<string, Row> Rows = RowFile.All.ToDictionary(r => r.Name);

    public static MatrixTheoryData<string, string> RowsInEveryLineEnding => new(Rows.Keys, Tries.Some(LineEnding.All).Select(e => e.Name));

    [Theory, MemberData(nameof(RowsInEveryLineEnding))]
    public void A_row_has_exactly_the_findings_it_states(string name, string ending)
    {
        var row = Rows[name];

        var findings = BaseGuide.Inspect(row.Overlay(LineEnding.All.Single(e => e.Name == ending)));

        Assert.Equal(row.Expected, RowFile.Print(findings));
    }

    [Fact]
    public void The_base_guide_has_no_findings() => Assert.Empty(BaseGuide.Inspect(BaseGuide.Files()));

    [Fact]
    public void Every_rule_that_a_text_can_break_occurs_in_a_row()
    {
        // These need a file that cannot be shown in a Markdown block; FileTests and PhotoTests have them.
        string[] elsewhere = ["file-changed", "file-linked", "file-unreadable", "file-too-large", "text-encoding", "text-control", "image-broken", "image-large", "image-position"];
        var stated = string.Join('\n', Rows.Values.Select(r => r.Expected));

        var missing = Rules.All.Select(r => r.Id).Except(elsewhere).Except(ShownRules.OfLaterStages).Where(id => !stated.Contains($" {id}: ", StringComparison.Ordinal));

        Assert.Empty(missing);
    }
}
