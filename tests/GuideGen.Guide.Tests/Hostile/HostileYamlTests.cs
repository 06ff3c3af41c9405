using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Tests.Hostile;

/// <summary>Structured text that grows, nests, calls or hides something.</summary>
public sealed class HostileYamlTests
{
    static string Lines(int count, Func<int, string> line) => string.Concat(Enumerable.Range(0, count).Select(i => line(i) + "\n"));

    public static TheoryData<string, string, string> Rows => new()
    {
        { "nine lists of nine aliases each", "a: &a [x, x]\n" + Lines(9, i => $"b{i}: &b{i} [{string.Join(", ", Enumerable.Repeat(i == 0 ? "*a" : $"*b{i - 1}", 9))}]"), "yaml-refused" },
        { "an alias of a map in itself", "a: &a\n  b: *a\n", "yaml-refused" },
        { "an anchor alone", "a: &x 1\n", "yaml-refused" },
        { "an anchor at a key", "&x a: 1\n", "yaml-refused" },
        { "an alias as a key", "a: &x b\n*x : 1\n", "yaml-refused" },
        { "an alias to nothing", "a: *x\n", "yaml-refused" },
        { "a merge key", "<<: *x\n", "yaml-refused" },
        { "a tag of a type", "a: !!python/object/apply:os.system [x]\n", "yaml-refused" },
        { "a tag of a class", "a: !<tag:yaml.org,2002:System.Diagnostics.Process> x\n", "yaml-refused" },
        { "a short tag", "a: !x y\n", "yaml-refused" },
        { "a tag of a plain type", "a: !!str 1\n", "yaml-refused" },
        { "a tag that is no address", "a: [!!ssharp]\n", "yaml-refused" },
        { "a tag in angles that is no address", "a: !<> x\n", "yaml-refused" },
        { "a tag of a handle that is not given", "a: !y!z x\n", "yaml-syntax" },
        { "bytes", "a: !!binary aGVsbG8=\n", "yaml-refused" },
        { "a tag handle of its own", "%TAG ! tag:x.example,2000:\n---\na: !y z\n", "yaml-refused" },
        { "a second document", "a: 1\n---\nb: 2\n", "yaml-refused" },
        { "a thousand documents", Lines(1_000, _ => "---\na: 1"), "yaml-refused" },
        { "a list as a key", "? [a]\n: 1\n", "yaml-refused" },
        { "a map as a key", "{a: 1}: 2\n", "yaml-refused" },
        { "lists in each other", new string('[', 100_000), "yaml-refused" },
        { "closed lists in each other", new string('[', 5_000) + new string(']', 5_000), "yaml-refused" },
        { "maps in each other", string.Concat(Enumerable.Repeat("{a: ", 50_000)), "yaml-refused" },
        { "hyphens in each other", string.Concat(Enumerable.Repeat("- ", 50_000)) + "a\n", "yaml-refused" },
        { "keys in each other", Lines(100, i => new string(' ', i) + "a:"), "yaml-refused" },
        { "question marks in each other", string.Concat(Enumerable.Repeat("? ", 20_000)) + "a\n", "yaml-refused" },
        { "a hundred thousand keys", Lines(100_000, i => $"k{i}: 1"), "yaml-refused" },
        { "a hundred thousand items", "a:\n" + Lines(100_000, _ => "- x"), "yaml-refused" },
        { "a hundred thousand items on a line", "a: [" + string.Concat(Enumerable.Repeat("x,", 100_000)) + "]\n", "yaml-refused" },
        { "one key twenty thousand times", Lines(20_000, _ => "a: 1"), "key-duplicate" },
        { "a key twice in different quotes", "a: 1\n\"a\": 2\n", "key-duplicate" },
        { "a key twice by an escape", "a: 1\n\"\\x61\": 2\n", "key-duplicate" },
        { "a value of two megabytes", "a: " + new string('x', 2_000_000) + "\n", "" },
        { "a folded value of a million lines", "a: >\n" + Lines(300_000, _ => "  x"), "" },
        { "a value in quotes over a hundred thousand lines", "a: \"" + Lines(100_000, _ => "x") + "\"\n", "yaml-syntax" },
        { "a quote that never ends", "a: \"" + new string('x', 500_000), "yaml-syntax" },
        { "a block whose indent is told as nine", "a: |9\n x\n", "yaml-syntax" },
        { "nothing but hyphens", new string('-', 500_000), "" },
        { "nothing but colons", new string(':', 200_000), "yaml-syntax" },
        { "colons apart", string.Concat(Enumerable.Repeat(": ", 100_000)), "yaml-syntax" },
        { "nothing but commas", "[" + new string(',', 100_000), "yaml-syntax" },
        { "nothing but hash signs", new string('#', 500_000), "" },
        { "nothing but percent signs", new string('%', 100_000), "yaml-syntax" },
        { "nothing but quotes", new string('"', 100_001), "yaml-syntax" },
        { "nothing but ampersands", new string('&', 100_000), "yaml-refused" },
        { "nothing but stars", new string('*', 100_000), "yaml-refused" },
        { "nothing but exclamation marks", new string('!', 100_000), "yaml-refused" },
        { "a key of a hundred thousand signs", new string('k', 100_000) + ": 1\n", "yaml-syntax" },
        { "an escape beyond all characters", "a: \"\\UFFFFFFFF\"\n", "yaml-syntax" },
        { "half a character by escapes", "a: \"\\uD800\"\n", "yaml-syntax" },
        { "an escape for nothing", "a: \"\\q\"\n", "yaml-syntax" },
        { "a directive of another version", "%YAML 9.9\n---\na: 1\n", "yaml-syntax" },
        { "a tab as indent", "a:\n\tb: 1\n", "yaml-syntax" },
    };

    [Theory, MemberData(nameof(Rows))]
    public void It_is_one_kind_of_finding_at_a_place_that_exists(string name, string yaml, string expected)
    {
        Assert.NotEmpty(name);
        var findings = new FindingList();
        var source = new SourceText("content/vehicle.yml", yaml);

        YamlReader.Read(source, findings);

        Assert.Equal(expected, string.Join(", ", findings.ToSorted().Select(f => f.Rule.Id).Distinct()));
        Assert.All(findings.ToSorted(), f => Assert.InRange(f.Span.Start + f.Span.Length, 0, yaml.Length));
    }
}
