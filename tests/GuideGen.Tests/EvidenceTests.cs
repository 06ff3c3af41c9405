using System.Text;
using System.Text.Json;
using GuideGen.Testing;

namespace GuideGen.Tests;

public sealed class EvidenceTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void Tables_of_the_small_guide_are_as_expected()
    {
        string[] formats = ["text", "json"];
        var made = formats.ToDictionary(f => $"evidence.{f}", f =>
        {
            var run = Tool.Run(Tool.SmallGuide, "evidence", "--today", "2026-06-01", "--format", f);
            Assert.Equal((0, ""), (run.Code, run.Error));
            return Encoding.UTF8.GetBytes(run.Out.ReplaceLineEndings("\n"));
        });

        Assert.Empty(Golden.Differences(Repository.PathTo("tests", "GuideGen.Tests", "EvidenceTables"), made));
    }

    [Fact]
    public void What_is_old_superseded_or_contradicts_itself_is_listed()
    {
        Tool.CopyGuide(temp);
        Change("faults/charge-air-hose-split.md", t => t.Replace("reviewed: 2026", "reviewed: 2021", StringComparison.Ordinal) + "\nThe hose clip bolt is tightened to 8 Nm.\n");
        Change("checks/pressure-test.md", t => t + "\nThe clip bolt 12 Nm.\n");
        Change("faults/battery-earth-loose.md", t => t + "\nThe clip bolt 6 Nm: another clip, for the page is not about the hose.\n");
        Change("parts/charge-air-hose.md", t => t.Replace("system:", "superseded-by: new-hose\nsystem:", StringComparison.Ordinal));
        temp.Write("guide/content/parts/new-hose.md", File.ReadAllText(temp.PathTo("guide/content/parts/charge-air-hose.md")).Replace("superseded-by: new-hose\n", "", StringComparison.Ordinal));

        var run = Tool.Run(temp.PathTo(), "evidence", "guide", "--format", "json", "--today", "2026-06-01", "--months", "12");

        Assert.Equal((0, ""), (run.Code, run.Error));
        using var json = JsonDocument.Parse(run.Out);
        Assert.Contains("content/faults/charge-air-hose-split.md", Column(json, "stale-reviews", "page"));
        Assert.Equal(["charge-air-hose"], Column(json, "superseded-parts", "part").Distinct());
        Assert.Equal(["clip bolt"], Column(json, "torques-differ", "bolt"));
        Assert.Equal(["12 Nm"], Column(json, "torques-differ", "torque"));
    }

    [Theory]
    [InlineData("to-safety", "no-hurry", true)]
    [InlineData("stop-now", "gently", true)]
    [InlineData("to-safety", "gently", false)] // one step: the symptom speaks for all its causes
    [InlineData("gently", "no-hurry", false)] // with neither the journey ends
    public void A_symptom_much_milder_than_a_plausible_cause_is_a_contradiction(string fault, string symptom, bool listed)
    {
        Tool.CopyGuide(temp);
        Change("faults/charge-air-hose-split.md", t => t.Replace("drive: gently", "drive: " + fault, StringComparison.Ordinal));
        Change("symptoms/reduced-power.md", t => t.Replace("drive: gently", "drive: " + symptom, StringComparison.Ordinal));
        Change("symptoms/engine-lamp.md", t => t.Replace("drive: no-hurry", "drive: to-safety", StringComparison.Ordinal));

        Assert.Equal(listed ? ["reduced-power"] : [], Drives());
    }

    [Fact]
    public void A_far_fetched_cause_is_no_contradiction_however_grave()
    {
        Tool.CopyGuide(temp);
        Change("faults/battery-earth-loose.md", t => t
            .Replace("drive: no-hurry", "drive: stop-now", StringComparison.Ordinal)
            .Replace("belief: 2.5", "belief: 0.01", StringComparison.Ordinal));

        Assert.Empty(Drives());
    }

    [Theory]
    [InlineData("limits-differ")]
    [InlineData("torques-differ")]
    [InlineData("drive-differs")]
    public void The_demo_guide_contradicts_itself_nowhere(string table)
    {
        var run = Tool.Run(Repository.Root, "evidence", "--format", "json", "--today", "2026-06-01");
        using var json = JsonDocument.Parse(run.Out);

        Assert.Empty(json.RootElement.GetProperty(table).EnumerateArray().Select(r => r.ToString()));
    }

    IEnumerable<string?> Drives()
    {
        var run = Tool.Run(temp.PathTo(), "evidence", "guide", "--format", "json", "--today", "2026-06-01");
        Assert.Equal((0, ""), (run.Code, run.Error));
        using var json = JsonDocument.Parse(run.Out);
        return [.. Column(json, "drive-differs", "symptom")];
    }

    [Theory]
    [InlineData("--months", "0")]
    [InlineData("--today", "01.06.2026")]
    public void Wrong_values_are_refused(string option, string value) =>
        Assert.Equal(2, Tool.Run(Tool.SmallGuide, "evidence", option, value).Code);

    [Fact]
    public void A_guide_with_errors_is_not_weighed()
    {
        Tool.CopyGuide(temp);
        temp.Write("guide/content/terms.yml", "boost: 1\n");

        var run = Tool.Run(temp.PathTo(), "evidence", "guide");

        Assert.Equal((1, ""), (run.Code, run.Out));
        Assert.Contains("'inspect' lists them", run.Error, StringComparison.Ordinal);
    }

    void Change(string page, Func<string, string> edit)
    {
        var path = "guide/content/" + page;
        temp.Write(path, edit(File.ReadAllText(temp.PathTo(path))));
    }

    static IEnumerable<string?> Column(JsonDocument json, string table, string column) =>
        json.RootElement.GetProperty(table).EnumerateArray().Select(r => r.GetProperty(column).GetString());
}
