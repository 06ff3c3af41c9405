using System.Collections.Immutable;
using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Tests.Rows;

namespace GuideGen.Guide.Tests;

/// <summary>The examples of rules, laid over the base guide; shared by the tests of the rooms that hold the rules.</summary>
static class ShownRules
{
    /// <summary>These look at the theme or at other editions, which only a later stage knows; its tests run their examples.</summary>
    public static readonly string[] OfLaterStages = ["theme-asset", "theme-template", "translation-fact", "words-missing", "words-places", "words-unknown"];

    public static Dictionary<string, byte[]> Over(Dictionary<string, byte[]> files, ImmutableArray<RuleExample> examples)
    {
        foreach (var example in examples) Lay(example, files);
        return files;
    }

    static void Lay(RuleExample example, Dictionary<string, byte[]> files)
    {
        switch (example.Form)
        {
            case ExampleForm.Lines:
                Assert.Contains("\n" + example.Text + "\n", "\n" + Encoding.UTF8.GetString(files[example.Path]), StringComparison.Ordinal);
                break;
            case ExampleForm.Change:
                files[example.Path] = Encoding.UTF8.GetBytes(Edit.Apply(Encoding.UTF8.GetString(files[example.Path]), example.Text));
                break;
            case ExampleForm.Whole:
                files[example.Path] = Encoding.UTF8.GetBytes(example.Text + "\n");
                break;
            case ExampleForm.Removed:
                files.Remove(example.Path);
                break;
            case ExampleForm.Told:
                break;
        }
    }
}
