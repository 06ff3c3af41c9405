using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests.Hostile;

/// <summary>Pages made to be slow are read or refused; how long each takes is measured by the tool of faults.</summary>
public sealed class SlowPageTests
{
    [Fact]
    public void Each_page_of_a_hundred_thousand_characters_is_read_or_refused_by_the_rules_that_are_listed()
    {
        var table = new StringBuilder();
        foreach (var (name, ofSize) in SlowMarkdown.Shapes) table.Append(name).Append(": ").AppendJoin(", ", Found(ofSize(100_000))).Append('\n');

        Assert.Empty(Golden.Differences(
            Repository.PathTo("tests", "GuideGen.Guide.Tests", "Hostile", "Golden"),
            new Dictionary<string, byte[]> { ["slow-pages.txt"] = Encoding.UTF8.GetBytes(table.ToString()) }));
    }

    public static TheoryData<string, int, string> Borders => new()
    {
        { "*a ", GuideLimits.MarksInBlock, "text-marks" },
        { "*a\n\n", GuideLimits.MarksInPage, "text-marks" },
        { "|", GuideLimits.BarsInLine, "text-marks" },
        { "a|\n", GuideLimits.BarsInBlock, "text-marks" },
        { "[d]: /x\n", GuideLimits.DefinitionsInPage, "text-marks" },
        { "a\n===\n", GuideLimits.DefinitionsInPage, "text-marks" },
        { "a\r\n---\r\n", GuideLimits.DefinitionsInPage, "text-marks" },
        { "a\r--\r", GuideLimits.DefinitionsInPage, "text-marks" },
        { "> a\n> -\n", GuideLimits.DefinitionsInPage, "text-marks" },
    };

    [Theory, MemberData(nameof(Borders))]
    public void A_page_up_to_a_limit_is_read_and_one_beyond_is_not(string piece, int limit, string rule)
    {
        Assert.DoesNotContain(rule, Found(string.Concat(Enumerable.Repeat(piece, limit))));
        Assert.Contains(rule, Found(string.Concat(Enumerable.Repeat(piece, limit + 1))));
    }

    [Theory, InlineData(' '), InlineData('\t'), InlineData('>')]
    public void A_line_is_read_up_to_the_limit_of_its_indent(char sign)
    {
        Assert.Empty(Found($"a\n\n```\n{new string(' ', GuideLimits.Indent)}x\n```\n"));
        Assert.Equal(["text-nesting"], Found($"a\n\n```\n{new string(sign, GuideLimits.Indent + 1)}x\n```\n"));
    }

    [Theory, InlineData("```"), InlineData("~~~"), InlineData("> ```"), InlineData("- ```"), InlineData("```x"), InlineData("<!--"), InlineData("a\n\n```")]
    public void What_is_opened_in_the_last_line_ends_with_the_page(string end)
    {
        var text = BaseGuide.Text("content/parts/hose.md") + "\n" + end;

        var body = PageBodyReader.Read(new SourceText("x.md", text), 0, new FindingList())!;

        Assert.All(body.Runs, r => Assert.InRange(r.Start + r.Length, r.Start + 1, text.Length));
        Assert.DoesNotContain(BaseGuide.InspectWith("content/parts/hose.md", text), f => f.Rule.Id == "text-nesting");
    }

    [Fact]
    public void The_place_where_it_becomes_too_much_is_told()
    {
        var findings = new FindingList();

        PageBodyReader.Read(new SourceText("x.md", "---\na: 1\n---\nIt splits.\n\n" + new string('|', 100)), 13, findings);

        Assert.Equal("x.md(6,61): error text-marks: There are more than 60 bars on one line; the page is not read beyond this place.", FindingFormatter.ToLine(Assert.Single(findings.ToSorted())));
    }

    static List<string> Found(string markdown)
    {
        var findings = new FindingList();
        PageBodyReader.Read(new SourceText("x.md", markdown), 0, findings);
        return [.. findings.ToSorted().Select(f => f.Rule.Id).Distinct()];
    }
}
