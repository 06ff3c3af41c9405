using System.Globalization;
using System.Text;
using GuideGen.Testing;

namespace GuideGen.Tests;

public sealed class DraftTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    /// <summary>What an author would write into the blanks, in their order; sections get a sentence each.</summary>
    public static TheoryData<string, string, string, string> Filled => new()
    {
        { "fault", "Intercooler cracked", "content/faults/intercooler-cracked.md", "Air escapes|air|reduced-power|rarely|2|gently|3|2.5|3" },
        { "symptom", "A hiss uphill", "content/symptoms/a-hiss-uphill.md", "It hisses|hear|gently" },
        { "check", "Squeeze the hose", "content/checks/squeeze-the-hose.md", "Look and feel|5|It is split|It is whole" },
        { "tree", "From a hiss", "content/trees/from-a-hiss.yml", "Listen|reduced-power|Is it loud?|charge-air-pressure-test|leak-found|holds|charge-air-hose-split|Read the codes|gently" },
        { "part", "Hose clip", "content/parts/hose-clip.md", "Holds the hose|air|At both ends" },
        { "task", "Take the undertray off", "content/tasks/take-the-undertray-off.md", "Eight screws|15" },
        { "code", "p1b00", "content/codes/P1B00.md", "Boost asked for and not met|Air is missing" },
        { "case", "2022 03 hose", "content/cases/2022-03-hose.yml", "2022-03-01|d20|90000|charge-air-hose-split|true" },
    };

    [Theory, MemberData(nameof(Filled))]
    public void A_draft_is_good_as_soon_as_its_blanks_are_filled(string kind, string name, string path, string words)
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        var guide = temp.PathTo("guide");

        var run = Tool.Run(guide, "draft", kind, name);

        Assert.Equal((0, ""), (run.Code, run.Error));
        var drafted = File.ReadAllText(Path.Combine(guide, path));
        var before = Tool.Run(guide, "inspect");
        Assert.Equal(1, before.Code);
        Assert.All(before.Out.Split('\n').Where(l => l.Contains("): ", StringComparison.Ordinal)), l => Assert.StartsWith(path, l, StringComparison.Ordinal));
        Assert.All(before.Out.Split('\n').Where(l => l.Contains("): ", StringComparison.Ordinal)), l => Assert.Contains("blank-left", l, StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(guide, path), Fill(drafted, words.Split('|')));
        Assert.Equal("0 errors, 0 warnings, 0 notes", Tool.Run(guide, "inspect").Out.Trim());
    }

    [Fact]
    public void A_case_that_an_owner_sent_is_filed_under_a_name_of_its_own()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        var sent = temp.Write("sent.yml", "date: 2022-03-01\nvariant: d20\ndistance: 90000\nfound: charge-air-hose-split\nproof: { cleared: true }\n");

        var run = Tool.Run(temp.PathTo("guide"), "draft", "case", "--from", sent);

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("content/cases/2022-03-d20-charge-air-hose-split.yml is part of the guide now", run.Out, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(sent), File.ReadAllText(temp.PathTo("guide", "content", "cases", "2022-03-d20-charge-air-hose-split.yml")));
    }

    [Fact]
    public void A_case_that_was_sent_twice_is_filed_once()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        var sent = temp.Write("sent.yml", "date: 2022-03-01\nvariant: d20\ndistance: 90000\nfound: charge-air-hose-split\nproof: { cleared: true }\n");
        Tool.Run(temp.PathTo("guide"), "draft", "case", "--from", sent);
        var before = Directory.EnumerateFiles(temp.PathTo("guide", "content", "cases")).Order().ToList();

        var run = Tool.Run(temp.PathTo("guide"), "draft", "case", "--from", sent);

        Assert.Equal(1, run.Code);
        Assert.Contains("case-duplicate", run.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was filed", run.Out + run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Directory.EnumerateFiles(temp.PathTo("guide", "content", "cases")).Order());
    }

    [Fact]
    public void A_sent_case_with_errors_is_told_why_and_not_filed()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        var sent = temp.Write("sent.yml", "date: 2022-03-01\nvariant: d20\ndistance: 90000\nfound: a-fault-unheard-of\nproof: { cleared: true }\n");

        var run = Tool.Run(temp.PathTo("guide"), "draft", "case", "--from", sent);

        Assert.Equal(1, run.Code);
        Assert.Contains("a-fault-unheard-of", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.EnumerateFiles(temp.PathTo("guide", "content", "cases")), f => f.Contains("unheard", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("draft", "case")]
    [InlineData("draft", "case", "a name", "--from", "sent.yml")]
    [InlineData("draft", "case", "--from", "nowhere.yml")]
    public void A_case_is_named_or_comes_from_a_file(params string[] arguments)
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        Assert.Equal(2, Tool.Run(temp.PathTo("guide"), arguments).Code);
    }

    [Fact]
    public void A_new_guide_compiles_at_once_and_has_schemas()
    {
        var made = Tool.Run(temp.PathTo(), "draft", "guide", "ours");
        var compiled = Tool.Run(temp.PathTo(), "compile", "ours");

        Assert.Equal((0, 0), (made.Code, compiled.Code));
        Assert.Contains("0 errors, 0 warnings, 0 notes", compiled.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(temp.PathTo("ours", ".schemas", "fault.json")));
    }

    [Fact]
    public void Nothing_that_is_there_is_overwritten()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        var page = Tool.Run(temp.PathTo("guide"), "draft", "part", "Charge-air hose");
        var whole = Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        Assert.Equal((2, "guidegen: content/parts/charge-air-hose.md is there already."), (page.Code, page.Error.Trim()));
        Assert.Equal((2, $"guidegen: {temp.PathTo("guide")} is not empty. Name a new folder."), (whole.Code, whole.Error.Trim()));
    }

    [Fact]
    public void Values_are_taken_from_options_and_written_so_that_they_are_read_back()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        Tool.Run(temp.PathTo(), "draft", "symptom", "Hiss: \"loud\"", "--guide", "guide", "--set", "sense=hear", "--set", "drive=gently", "--set", "summary=It hisses, and pulls badly");

        var text = File.ReadAllText(temp.PathTo("guide", "content", "symptoms", "hiss-loud.md"));
        Assert.Contains("\nname: \"Hiss: \\\"loud\\\"\"\n", text, StringComparison.Ordinal);
        Assert.Contains("\nsense: hear\n", text, StringComparison.Ordinal);
        Assert.Contains("\nsummary: \"It hisses, and pulls badly\"\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("part", "???", "", "'???' cannot become an address. Use letters and digits.")]
    [InlineData("code", "P4299", "", "'P4299' cannot become an address. Name a code, such as P1A42.")]
    [InlineData("part", "Clip", "sistem=air", "a part has no key 'sistem' that can be set. Did you mean 'system'? Known are name, summary, system, where.")]
    [InlineData("part", "Clip", "system", "'system' is not KEY=VALUE.")]
    public void What_cannot_be_meant_is_wrong_usage(string kind, string name, string setting, string words)
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        var run = Tool.Run(temp.PathTo("guide"), setting.Length == 0 ? ["draft", kind, name] : ["draft", kind, name, "--set", setting]);

        Assert.Equal((2, "guidegen: " + words), (run.Code, run.Error.Trim()));
    }

    [Fact]
    public void On_a_terminal_it_asks_and_an_empty_answer_stays_blank()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        using var input = new StringReader("Holds the hose\n\nAt both ends\n");
        using var output = new StringWriter(CultureInfo.InvariantCulture);

        var code = new CommandLine(Terminal.Of(input, output, output, isPiped: false), temp.PathTo("guide")).Run(["draft", "part", "Clip"]);

        Assert.Equal(0, code);
        Assert.Contains("system: The system of the vehicle it belongs to. Write the name of a system.\n> ", output.ToString().ReplaceLineEndings("\n"), StringComparison.Ordinal);
        var text = File.ReadAllText(temp.PathTo("guide", "content", "parts", "clip.md"));
        Assert.Contains("\nsummary: Holds the hose\n", text, StringComparison.Ordinal);
        Assert.Contains("\nsystem: ____\n", text, StringComparison.Ordinal);
        Assert.Contains("\nwhere: At both ends\n", text, StringComparison.Ordinal);
    }

    static string Fill(string drafted, string[] words)
    {
        var filled = new StringBuilder();
        var next = 0;
        var parts = drafted.Split("____");
        for (var i = 0; i < parts.Length; i++)
        {
            filled.Append(parts[i]);
            if (i < parts.Length - 1) filled.Append(next < words.Length ? words[next++] : "So it is:");
        }

        return filled.ToString();
    }
}
