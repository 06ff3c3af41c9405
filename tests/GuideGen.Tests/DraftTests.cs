using System.Globalization;
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

    [Fact]
    public void What_is_wrong_with_a_sent_case_is_said_of_the_file_that_was_sent()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        temp.Write(Path.Combine("guide", "sent.yml"), "date: 2022-03-01\nvariant: d20\ndistance: 90000\nfound: a-fault-unheard-of\nproof: { cleared: true }\n");

        var run = Tool.Run(temp.PathTo("guide"), "draft", "case", "--from", "sent.yml");

        Assert.StartsWith("sent.yml(4,8): error name-unknown", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fault", "  # tools: ", "  tools: ")]
    [InlineData("fault", "# hazards: ", "hazards: ")]
    [InlineData("case", "# codes: ", "codes: ")]
    public void A_key_that_is_taken_as_the_draft_has_it_is_a_blank(string kind, string commented, string taken)
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        Tool.Run(temp.PathTo("guide"), "draft", kind, "A new one");
        var path = Directory.EnumerateFiles(temp.PathTo("guide", "content"), "a-new-one.*", SearchOption.AllDirectories).Single();
        var before = Blanks();
        Assert.Contains("\n" + commented, File.ReadAllText(path), StringComparison.Ordinal);
        File.WriteAllText(path, File.ReadAllText(path).Replace("\n" + commented, "\n" + taken, StringComparison.Ordinal));

        Assert.True(Blanks() > before);

        int Blanks() => Tool.Run(temp.PathTo("guide"), "inspect").Out.Split(": error blank-left").Length - 1;
    }

    [Fact]
    public void The_help_of_a_section_is_no_text_for_a_reader()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        Tool.Run(temp.PathTo("guide"), "draft", "part", "Hose clip");
        var path = temp.PathTo("guide", "content", "parts", "hose-clip.md");
        File.WriteAllText(path, File.ReadAllText(path).Replace("____ ", "", StringComparison.Ordinal));

        Assert.Contains($"({Line(path)},1): error blank-left", Tool.Run(temp.PathTo("guide"), "inspect").Out, StringComparison.Ordinal);

        static string Line(string file) => (File.ReadAllLines(file).ToList().FindIndex(l => l.StartsWith("Say how to find it", StringComparison.Ordinal)) + 1).ToString(CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_draft_names_what_its_author_may_name_and_has_schemas_beside_it()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        Directory.Delete(temp.PathTo("guide", ".schemas"), true);

        Tool.Run(temp.PathTo("guide"), "draft", "fault", "Intercooler cracked");

        var page = temp.PathTo("guide", "content", "faults", "intercooler-cracked.md");
        var text = File.ReadAllText(page);
        Assert.Matches(@"the name of a system\.\n# Names to use: [a-z, -]*\bair\b", text);
        Assert.Matches(@"names of hazards\.\n# Names to use: [a-z0-9,#\s-]*\bhot-parts\b", text);
        Assert.Contains("\n# Names to use: reduced-power.\n", text, StringComparison.Ordinal);
        Assert.Contains("\n# Such as: { reduced-power: usually }\n", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), l => Assert.True(l.Length <= 110, l));
        Assert.Contains("These count: always as 0.95, usually as 0.75, sometimes as 0.35, rarely as 0.08.", text, StringComparison.Ordinal);
        var schema = text.Split("$schema=")[1].Split('\n')[0];
        Assert.True(File.Exists(Path.Combine(Path.GetDirectoryName(page)!, schema)));
    }

    [Fact]
    public void An_answer_that_would_be_an_error_is_asked_for_again()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");
        using var input = new StringReader("It hisses\nloudly\nhear\n\n\n");
        using var output = new StringWriter(CultureInfo.InvariantCulture);

        new CommandLine(Terminal.Of(input, output, output, isPiped: false), temp.PathTo("guide")).Run(["draft", "symptom", "A hiss"]);

        Assert.Contains("> 'loudly' is not ", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("\nsense: hear\n", File.ReadAllText(temp.PathTo("guide", "content", "symptoms", "a-hiss.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_names_what_may_be_answered_and_is_not_asked_for_a_page_that_is_there()
    {
        Tool.Run(temp.PathTo(), "draft", "guide", "guide");

        Assert.Contains("system: The system of the vehicle it belongs to. Write the name of a system.\nNames to use: air", Ask("Intercooler cracked"), StringComparison.Ordinal);
        Assert.DoesNotContain("summary: ", Ask("Intercooler cracked"), StringComparison.Ordinal);

        string Ask(string name)
        {
            using var output = new StringWriter(CultureInfo.InvariantCulture);
            new CommandLine(Terminal.Of(TextReader.Null, output, output, isPiped: false), temp.PathTo("guide")).Run(["draft", "fault", name]);
            return output.ToString();
        }
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
        Assert.Contains("system: The system of the vehicle it belongs to. Write the name of a system.\nNames to use: air.\n> ", output.ToString().ReplaceLineEndings("\n"), StringComparison.Ordinal);
        var text = File.ReadAllText(temp.PathTo("guide", "content", "parts", "clip.md"));
        Assert.Contains("\nsummary: Holds the hose\n", text, StringComparison.Ordinal);
        Assert.Contains("\nsystem: ____\n", text, StringComparison.Ordinal);
        Assert.Contains("\nwhere: At both ends\n", text, StringComparison.Ordinal);
    }

    /// <summary>Keys behind a # stay; the help of a section goes with its blank.</summary>
    static string Fill(string drafted, string[] words)
    {
        var next = 0;
        return string.Join('\n', drafted.Split('\n').Select(l => l.TrimStart().StartsWith("# ", StringComparison.Ordinal) ? l : FillLine(l)));

        string FillLine(string line)
        {
            if (line.StartsWith("____ ", StringComparison.Ordinal)) return "So it is: looked at and understood.";
            var parts = line.Split("____");
            return parts[0] + string.Concat(parts.Skip(1).Select(p => words[next++] + p));
        }
    }
}
