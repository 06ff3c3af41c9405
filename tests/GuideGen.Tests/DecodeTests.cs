using System.Text.Json;
using GuideGen.Testing;

namespace GuideGen.Tests;

public sealed class DecodeTests
{
    static readonly string[] Fields =
    [
        "code", "certainty", "written", "repaired", "owner", "area", "bytes", "failureType", "status", "meaning", "condition", "support", "pages",
    ];

    [Fact]
    public void A_code_is_told_in_words_with_the_pages_of_the_guide_at_hand()
    {
        var run = Tool.Run(Tool.SmallGuide, "decode", "PO299-14");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.StartsWith("P0299-14  ", run.Out, StringComparison.Ordinal);
        Assert.Contains("repaired, written 'PO299-14'; standard code; fuel and air metering, injectors", run.Out, StringComparison.Ordinal);
        Assert.Contains("failure type 14: if the module follows the standard: wire shorted to ground or open", run.Out, StringComparison.Ordinal);
        Assert.Contains("codes/p0299.html", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_every_field_of_every_code()
    {
        var run = Tool.Run(Tool.SmallGuide, "decode", "--format", "json", "59 02 FF 02 99 00 AF 40 31 14 28");

        var codes = JsonDocument.Parse(run.Out).RootElement.EnumerateArray().ToList();
        Assert.All(codes, c => Assert.Equal(Fields, c.EnumerateObject().Select(f => f.Name)));
        Assert.Equal(["P0299", "C0031"], codes.Select(c => c.GetProperty("code").GetString()));
        Assert.Equal(["02 99", "40 31"], codes.Select(c => c.GetProperty("bytes").GetString()));
        Assert.Equal(["AF", "28"], codes.Select(c => c.GetProperty("status").GetProperty("byte").GetString()));
        Assert.Equal(["00", "14"], codes.Select(c => c.GetProperty("failureType").GetProperty("byte").GetString()));
    }

    [Theory]
    [InlineData("P0299", "certain", "standard", "underboost")]
    [InlineData("p o299", "repaired", "standard", "underboost")]
    [InlineData("P1234", "certain", "maker", null)]
    [InlineData("B3210", "certain", "reserved", null)]
    public void A_typed_code_says_how_sure_it_is_and_whose(string typed, string certainty, string owner, string? condition)
    {
        var run = Tool.Run(Path.GetTempPath(), "decode", "--format", "json", typed);

        var code = Assert.Single(JsonDocument.Parse(run.Out).RootElement.EnumerateArray());
        Assert.Equal(certainty, code.GetProperty("certainty").GetString());
        Assert.Equal(owner, code.GetProperty("owner").GetString());
        Assert.Equal(condition, code.GetProperty("condition").GetString());
        Assert.Empty(code.GetProperty("pages").EnumerateArray());
    }

    [Fact]
    public void A_report_comes_in_through_a_pipe()
    {
        using var report = new StringReader("Stored DTCs: P0087, P0093;\nPending DTCs: P0101.\nPart no. C1145-3X clip\n");
        var run = Tool.Run(report, Path.GetTempPath(), "decode", "-");

        Assert.Equal(["P0087", "P0093", "P0101"], run.Out.Split('\n').Where(l => l.StartsWith('P')).Select(l => l[..5]));
    }

    [Theory]
    [InlineData("nothing here")]
    [InlineData("7F 03 11")]
    [InlineData("43 00")]
    public void Where_no_code_is_found_the_exit_code_says_so(string text)
    {
        var run = Tool.Run(Path.GetTempPath(), "decode", text);

        Assert.Equal(ExitCode.Findings, run.Code);
        Assert.NotEmpty(run.Out);
    }

    [Fact]
    public void The_guide_can_be_named()
    {
        using var elsewhere = new TempFolder();
        var run = Tool.Run(elsewhere.PathTo("."), "decode", "P0299", "--guide", Tool.SmallGuide);

        Assert.Contains("codes/p0299.html", run.Out, StringComparison.Ordinal);
    }
}
