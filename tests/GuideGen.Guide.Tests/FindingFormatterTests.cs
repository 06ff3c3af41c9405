using System.Text;
using System.Text.Json;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using GuideGen.Testing;
using Json.Schema;

namespace GuideGen.Guide.Tests;

public sealed class FindingFormatterTests
{
    static readonly Rule Rule = new("some-rule", Severity.Warning, "Title", "Wrong: {0}.", "Mend it.");

    /// <summary>A line with ‹ and › around the place; what is printed below the first line.</summary>
    public static TheoryData<string, string> Excerpts => new()
    {
        { "drive: ‹gentle›", "    drive: gentle\n           ^^^^^^\n" },
        { "name: Hose‹›", "    name: Hose\n              ^\n" },
        { "‹›", "" },
        { "‹›name: Hose", "    name: Hose\n    ^\n" },
        { "\ta\t‹b›c", "    \ta\tbc\n    \t \t^\n" },
        { "first\nsecond ‹place\nthird› line", "    second place\n           ^^^^^\n" },
        { "one\r\ntwo ‹three›\r\n", "    two three\n        ^^^^^\n" },
        { "one\rtwo ‹three›\rfour", "    two three\n        ^^^^^\n" },
        { "red \u001B[31m‹text›", "    red \uFFFD[31mtext\n             ^^^^\n" },
        { $"‹start›{new string('x', 200)}", $"    start{new string('x', 94)}…\n    ^^^^^\n" },
        { $"{new string('x', 200)}‹end›", $"    …{new string('x', 96)}end\n    {new string(' ', 97)}^^^\n" },
        { $"{new string('x', 150)}‹mid›{new string('y', 150)}", $"    …{new string('x', 29)}mid{new string('y', 66)}…\n    {new string(' ', 30)}^^^\n" },
        { $"‹{new string('x', 200)}›", $"    {new string('x', 99)}…\n    {new string('^', 100)}\n" },
    };

    [Theory, MemberData(nameof(Excerpts))]
    public void The_written_line_is_shown_with_carets_under_the_place(string marked, string expected)
    {
        var finding = Rule.At(Place(marked), "x");

        Assert.Equal($"a.md{finding.Span.From}: warning some-rule: Wrong: x.\n{expected}    Mend it.\n", Print(finding));
    }

    [Fact]
    public void A_message_stays_in_one_line_and_does_not_reach_the_terminal_as_commands()
    {
        var finding = Rule.At(Place("‹a›"), "a\nb\u001B[0m");

        Assert.StartsWith("a.md(1,1): warning some-rule: Wrong: a b\uFFFD[0m.\n", Print(finding), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_without_a_hint_prints_none()
    {
        var finding = (Rule with { Hint = "" }).At(Place("‹a›"), "x");

        Assert.Equal("a.md(1,1): warning some-rule: Wrong: x.\n    a\n    ^\n", Print(finding));
    }

    [Theory, InlineData("findings.txt"), InlineData("findings.json"), InlineData("findings.sarif"), InlineData("findings.log")]
    public void Findings_of_a_guide_are_printed_as_in_the_golden_file(string golden)
    {
        var expected = Repository.Read("tests", "GuideGen.Guide.Tests", "Golden", golden);
        var findings = Sample();

        var printed = Path.GetExtension(golden) switch
        {
            ".json" => Json(findings) + "\n",
            ".sarif" => Sarif(findings) + "\n",
            ".log" => Annotations([.. findings]),
            _ => Print([.. findings]),
        };

        Assert.Equal(expected, printed);
    }

    [Fact]
    public void The_json_of_no_findings_is_an_empty_array() => Assert.Equal(0, JsonDocument.Parse(Json([])).RootElement.GetArrayLength());

    /// <summary>The schema of OASIS SARIF 2.1.0, as the package Sarif.Sdk brings it.</summary>
    [Fact]
    public void The_log_keeps_to_the_published_schema_and_names_a_rule_of_the_tool_for_each_finding()
    {
        var schema = JsonSchema.FromText(PublishedSchema());
        using var log = JsonDocument.Parse(Sarif(Sample()));

        var verdict = schema.Evaluate(log.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(verdict.IsValid, string.Join('\n', (verdict.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"))));
        var run = log.RootElement.GetProperty("runs")[0];
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");
        Assert.All(run.GetProperty("results").EnumerateArray(), r =>
            Assert.Equal(r.GetProperty("ruleId").GetString(), rules[r.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString()));
    }

    [Theory]
    [InlineData("\"level\": \"error\"", "\"level\": \"grave\"")]
    [InlineData("\"text\":", "\"words\":")]
    [InlineData("\"startLine\": 1,", "\"startLine\": 0,")]
    public void The_published_schema_sees_a_log_that_is_wrong(string right, string wrong)
    {
        var broken = Sarif(Sample()).Replace(right, wrong, StringComparison.Ordinal);
        using var log = JsonDocument.Parse(broken);

        Assert.NotEqual(Sarif(Sample()), broken);
        Assert.False(JsonSchema.FromText(PublishedSchema()).Evaluate(log.RootElement).IsValid);
    }

    [Fact]
    public void A_path_in_the_log_is_a_relative_reference()
    {
        var finding = Rule.At(new SourceText("content/images/größe 100%.svg", "x").Top, "x");

        using var log = JsonDocument.Parse(Sarif([finding], "docs/"));

        var uri = log.RootElement.GetProperty("runs")[0].GetProperty("results")[0].GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("artifactLocation").GetProperty("uri").GetString();
        Assert.Equal("docs/content/images/gr%C3%B6%C3%9Fe%20100%25.svg", uri);
    }

    [Fact]
    public void Text_of_an_author_cannot_begin_an_annotation_or_a_property_of_its_own()
    {
        var finding = (Rule with { Title = "One, two: three" }).At(new SourceText("a,b:c.md", "ab\ncd").Span(1, 3), "100%\r\n::error::x");

        Assert.Equal(
            "::warning file=docs/a%2Cb%3Ac.md,line=1,endLine=2,col=2,title=some-rule%3A One%2C two%3A three::Wrong: 100%25%0D%0A::error::x.%0AMend it.\n",
            Annotations([finding], "docs/"));
    }

    [Theory]
    [InlineData(Severity.Error, "error")]
    [InlineData(Severity.Warning, "warning")]
    [InlineData(Severity.Note, "notice")]
    public void An_annotation_is_of_the_kind_that_the_runners_know(Severity severity, string command) =>
        Assert.StartsWith($"::{command} file=a.md,", Annotations([Rule.At(Place("‹a›"), "x").Weighing(severity)]), StringComparison.Ordinal);

    static string PublishedSchema()
    {
        using var reader = new StreamReader(typeof(FindingFormatterTests).Assembly.GetManifestResourceStream("sarif-2.1.0.json")!);
        return reader.ReadToEnd();
    }

    static string Annotations(IEnumerable<Finding> findings, string prefix = "")
    {
        using var writer = new StringWriter();
        new AnnotationWriter(prefix).Write(writer, findings);
        return writer.ToString();
    }

    static string Sarif(IReadOnlyCollection<Finding> findings, string prefix = "")
    {
        using var stream = new MemoryStream();
        new SarifWriter(prefix).Write(stream, findings);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    static IReadOnlyList<Finding> Sample()
    {
        var files = BaseGuide.Files();
        files.Remove("site-config.yml");
        files["content/parts/hose.md"] = Encoding.UTF8.GetBytes(BaseGuide.Text("content/parts/hose.md")
            .Replace("system: air", "system: brake", StringComparison.Ordinal)
            .Replace("It leads the air.", "It leads the air, see https and so on until the line is far too long for any terminal: [the \"test\"](../checks/presure-test.md).", StringComparison.Ordinal));
        files["content/tasks/clear-codes.md"] = Encoding.UTF8.GetBytes(BaseGuide.Text("content/tasks/clear-codes.md")
            .Replace("2. Clear them.", "2.\tTake the\tairbag out – größte Vorsicht.", StringComparison.Ordinal));
        return BaseGuide.Inspect(files);
    }

    static SourceSpan Place(string marked)
    {
        var (start, end) = (marked.IndexOf('‹', StringComparison.Ordinal), marked.IndexOf('›', StringComparison.Ordinal) - 1);
        var text = marked.Replace("‹", "", StringComparison.Ordinal).Replace("›", "", StringComparison.Ordinal);
        return new SourceText("a.md", text).Span(start, end - start);
    }

    static string Print(params Finding[] findings)
    {
        using var writer = new StringWriter();
        FindingFormatter.WriteText(writer, findings);
        return writer.ToString();
    }

    static string Json(IEnumerable<Finding> findings)
    {
        using var stream = new MemoryStream();
        FindingFormatter.WriteJson(stream, findings);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
