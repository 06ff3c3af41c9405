using System.Text;
using GuideGen.Codes.Reading;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;
using GuideGen.Testing;

namespace GuideGen.Faults.Fuzz;

/// <summary>Everything that reads what strangers write, with seeds to begin from and what holds for any text.</summary>
static class Readers
{
    static readonly string[] CodeSeeds =
    [
        "P0299", "P0299-00", "p 0 2 9 9", "PO299", "U0100:00 stored", "P0299, P0234 and C1A42", "P1113/P0113", "The codes P0299 and B10FF-1A came back, P0420 did not.", "no P0299", "P0299 (pending)", "02 99", "$0299",
        "Engine control: P0299 stored, P2263 permanent\nBrakes: C0035 pending\n", "Module 7E8\nDTC 1 of 3: P0299\n",
    ];

    static readonly string[] RawSeeds =
    [
        "43 02 99 00 00 00 00", "7E8 06 43 02 02 99 22 63", "7E8 10 0A 43 04 02 99 22 63\n7E8 21 C0 35 10 FF 00", "48 6B 10 43 02 99 00 00 00 00 A1", "59 02 FF 02 99 00 AF", "NO DATA", "SEARCHING...\n43 01 02 99",
        "0: 43 04 02 99 22 63\n1: C0 35 10 FF 00 00 00", "00A\n0: 430402992263\n1: C03510FF000000",
    ];

    static readonly string[] CodePieces = ["P", "C", "B", "U", "P0", "0299", "-00", "43", "7E8 ", "10 ", "21 ", "0: ", "59 02 ", "FF", "stored", "pending", "not ", "no ", "1 of 2", "DTC", "code ", "$", "0x", ", "];

    static readonly string[] YamlPieces = ["name: x\n", "- a\n", "? ", "| \n", ">-\n", "&a ", "*a", "!!str ", "!<", "!<a:b> ", "!a!b ", "%TAG ! a:\n---\n", "---\n", "...\n", "\"\\x41\"", "\"\\UFFFFFFFF\"", "[a, b]", "{a: b}", "\t", "  ", "# c\n", "'", "\"", "%YAML 1.2\n"];

    static readonly string[] PagePieces = ["## Safety\n", "# ", "**", "*", "_", "[a](b)", "![", "](", "[a]: b\n", "|a|b|\n|-|-|\n", "> ", "- ", "1. ", "```\n", "`", "<b>", "&amp;", "\\", "---\n", "===\n", "P0299", "    ", "\n\n"];

    public static IEnumerable<FuzzTarget> All()
    {
        yield return new("codes in prose and reports", 3_000_000, new(1, CodeSeeds, CodePieces), text => ReadsCodes(text, ReadingPlace.FreeText));
        yield return new("codes in the look-up box", 2_500_000, new(2, CodeSeeds, CodePieces), text => ReadsCodes(text, ReadingPlace.LookUpBox));
        yield return new("raw answers", 3_000_000, new(3, RawSeeds, CodePieces), text => ReadsCodes(text, ReadingPlace.FreeText));
        yield return new("front matter", 1_000_000, new(4, Fronts(), YamlPieces), ReadsYaml);
        yield return new("pages", 500_000, new(5, Guide(".md"), PagePieces), ReadsPage);
        foreach (var path in new[] { "content/trees/reduced-power.yml", "content/cases/2019-05-w20d-hose.yml", "content/faults/hose-split.md", "content/checks/pressure-test.md", "site-config.yml", "content/vehicle.yml" })
        {
            yield return new($"a whole guide with another {path}", 8_000, new(6, [TextOf(path)], [.. YamlPieces, .. PagePieces]), text => Inspects(path, text));
        }

        foreach (var script in ScriptReaders.All()) yield return script;
    }

    static bool ReadsCodes(string text, ReadingPlace place)
    {
        foreach (var find in CodeReader.Read(text, place).Finds)
        {
            if (find.Start < 0 || find.Length <= 0 || find.Start + find.Length > text.Length) return false;
        }

        return true;
    }

    static bool ReadsYaml(string text)
    {
        var (findings, source) = (new FindingList(), new SourceText("x.yml", text));
        var node = YamlReader.Read(source, findings);
        return AreSound(findings.ToSorted(), source) && (node is null || node.Span.Start + node.Span.Length <= text.Length);
    }

    static bool ReadsPage(string text)
    {
        var (findings, source) = (new FindingList(), new SourceText("x.md", text));
        var body = PageBodyReader.Read(source, 0, findings);
        return AreSound(findings.ToSorted(), source) && (body is null || body.Runs.All(r => r.Start >= 0 && r.Start + r.Length <= text.Length));
    }

    static bool Inspects(string path, string text)
    {
        var files = new Dictionary<string, byte[]>(BaseFiles) { [path] = Encoding.UTF8.GetBytes(text) };
        var findings = GuideInspector.Inspect(GuideLoader.Load(new MemoryFiles(files)), new DateOnly(2026, 6, 1));
        FindingFormatter.WriteText(TextWriter.Null, findings);
        return findings.All(f => f.Span.Start >= 0 && f.Span.Start + f.Span.Length <= f.Span.Source.Text.Length);
    }

    static bool AreSound(IEnumerable<Finding> findings, SourceText source) =>
        findings.All(f => f.Span.Start >= 0 && f.Span.Length >= 0 && f.Span.Start + f.Span.Length <= source.Text.Length);

    static Dictionary<string, byte[]> BaseFiles { get; } = ReadBase();

    static Dictionary<string, byte[]> ReadBase()
    {
        var folder = Repository.PathTo("tests", "GuideGen.Guide.Tests", "BaseGuide");
        return Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllBytes);
    }

    static string TextOf(string path) => Encoding.UTF8.GetString(BaseFiles[path]);

    static string[] Guide(string ending) => [.. BaseFiles.Keys.Where(p => p.EndsWith(ending, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(TextOf)];

    static string[] Fronts() => [.. Guide(".yml"), .. Guide(".md").Select(t => t.Split("---\n")[1])];
}
