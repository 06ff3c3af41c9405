using System.Text;
using GuideGen.Testing;

namespace GuideGen.Tests;

/// <summary>What trees cost, as a person and as a program reads it.</summary>
public sealed class EvidenceTreesTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void The_trees_of_the_small_guide_cost_what_is_expected()
    {
        var made = new Dictionary<string, byte[]>
        {
            ["trees.txt"] = Bytes(Tool.Run(Tool.SmallGuide, "evidence", "trees")),
            ["trees.json"] = Bytes(Tool.Run(Tool.SmallGuide, "evidence", "trees", "--format", "json")),
        };

        Assert.Empty(Golden.Differences(Repository.PathTo("tests", "GuideGen.Tests", "Evidence"), made));
    }

    [Fact]
    public void A_guide_with_errors_is_not_weighed()
    {
        Tool.CopyGuide(temp);
        temp.Write("guide/content/terms.yml", "boost: { means: Air pressure, alsoo: [push] }\n");

        var run = Tool.Run(temp.PathTo(), "evidence", "trees", "guide");

        Assert.Equal((1, ""), (run.Code, run.Out));
        Assert.Contains("its trees cannot be weighed", run.Error, StringComparison.Ordinal);
    }

    static byte[] Bytes(ToolRun run)
    {
        Assert.Equal((0, ""), (run.Code, run.Error));
        return Encoding.UTF8.GetBytes(run.Out.ReplaceLineEndings("\n"));
    }
}
