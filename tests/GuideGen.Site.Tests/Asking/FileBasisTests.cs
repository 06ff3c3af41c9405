using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Text;
using GuideGen.Site.Asking;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Asking;

/// <summary>A file that asks its guide for what has not changed would look as it did, whatever else has.</summary>
public sealed partial class FileBasisTests
{
    /// <summary>What somebody may do to a line: count up, doubt, say more, throw it away, name one thing less.</summary>
    static readonly Func<string, string>[] Slips =
    [
        line => Figure().Replace(line, n => (int.Parse(n.Value, CultureInfo.InvariantCulture) + 1).ToString(CultureInfo.InvariantCulture), 1),
        line => Frequency().Replace(line, w => w.Value == "rarely" ? "usually" : "rarely", 1),
        line => line + " Indeed.",
        _ => "",
        line => FirstOfSeveral().Replace(line, open => open.Value[..1], 1),
    ];

    /// <summary>Of so many pages one is summed up otherwise: enough to find each way on which a page comes to another. All of them were tried once.</summary>
    const int Stride = 5;

    [Theory, InlineData(Guides.Published, 40), InlineData(Guides.Translated, 40), InlineData(Guides.Demo, 8)]
    public void After_any_change_of_a_line_a_file_of_the_same_basis_is_the_same(string guide, int times)
    {
        var files = Guides.ReadAll(Guides.Open(guide));
        var changes = (
            from file in files
            where Path.GetExtension(file.Key) is ".md" or ".yml"
            from line in Text(file.Value).Split('\n').Index()
            from slip in Slips.Index()
            where slip.Item(line.Item) != line.Item
            select (Path: file.Key, Line: line.Index, Slip: slip.Index)).ToList();
        var before = SiteOf(files)!.ToDictionary(f => f.Address, f => (Bytes: f.Read(), Basis: f.Basis!));
        var same = 0;
        Gen.Int[0, changes.Count - 1].Sample(
            change =>
            {
                var (path, line, slip) = changes[change];
                foreach (var now in SiteOf(Changed(files, path, line, Slips[slip])) ?? [])
                {
                    if (!before.TryGetValue(now.Address, out var then) || now.Basis!.DigestBy(then.Basis.Asked) != then.Basis.DigestBy(then.Basis.Asked)) continue;
                    Interlocked.Increment(ref same);
                    Assert.Equal((now.Address, Text(then.Bytes)), (now.Address, Text(now.Read())));
                    Assert.Equal(then.Basis.Asked, now.Basis.Asked);
                }
            },
            iter: Tries.Of(times),
            print: c => $"{changes[c]}");
        Assert.NotEqual(0, same);
    }

    [Fact]
    public void A_tree_follows_from_those_that_are_joined_by_one_it_joins()
    {
        const string Lamp = "content/trees/engine-lamp.yml", Third = "content/trees/third.yml";
        var guide = new Overlay(Guides.Open(Guides.Small)).Replace(Lamp, "read: { advice: \"Read the codes and look them up here.\", drive: no-hurry }", "read: { join: third }")
            .Put(Third, "name: Further on\nsymptom: engine-lamp\nsummary: What is left.\nstart: look\nnodes:\n  look:\n    do: look-over\n    outcomes: { oil-seen: end, lead-moves: end, nothing: end }\n    cannot-tell: end\n  end: { advice: \"Ask a workshop.\", drive: gently }\n");

        AssertFollows("trees/reduced-power.html", guide, g => g.Replace(Third, "    do: look-over\n    outcomes: { oil-seen: end, lead-moves: end, nothing: end }", "    do: pressure-test\n    outcomes: { leak-found: end, holds: end }"));
    }

    [Fact]
    public void A_tree_follows_from_how_likely_a_fault_is_that_it_does_not_show()
    {
        const string Fault = "content/faults/battery-earth-loose.md";
        var guide = new Overlay(Guides.Open(Guides.Small)).Replace(Fault, "symptoms: {", "symptoms: { reduced-power: usually,");

        AssertFollows("trees/reduced-power.html", guide, g => g.Replace(Fault, "belief: ", "belief: 10"));
    }

    [Fact]
    public void A_link_follows_from_the_headings_of_a_translation()
    {
        const string Part = "content/parts/charge-air-hose.md", German = "content/parts/charge-air-hose.de.md";
        var guide = new Overlay(Guides.Open(Guides.Small)).Append("site-config.yml", "also-in: [de]\n").Append(Part, "\n## Where to buy it\n\nAnywhere.\n")
            .Append("content/tasks/read-codes.md", "\nSee [where to buy it](../parts/charge-air-hose.md#where-to-buy-it).\n");
        guide.Put(German, "---\nname: Ladeluftschlauch\n---\n## Wo es sitzt\n\nVorn.\n\n## Was es tut\n\nEs leitet Luft.\n\n## Wie es ausfällt\n\nEs reißt.\n");

        AssertFollows("de/tasks/read-codes.html", guide, g => g.Append(German, "\n## Where to buy it\n\nAnywhere.\n"));
    }

    [Fact]
    public void Every_page_that_shows_the_summary_of_another_follows_from_it()
    {
        SittingMemory memory = new();
        var files = new MemoryFiles(Guides.ReadAll(Guides.Open(Guides.Demo)));
        var guide = GuideEditions.Read(files, ThemeFiles.BuiltIn, null, memory);
        var before = guide.Draw(files, memory).Pages().Where(f => f.Address.EndsWith(".html", StringComparison.Ordinal)).Select(f => (f.Address, Html: Text(f.Read()), Basis: f.Basis!)).ToList();
        foreach (var entry in guide.Guide.Entries.Where((_, i) => i % Stride == 0))
        {
            var edited = new Overlay(files).Replace(entry.Origin.Path, entry.Summary.Span.Written, entry.Summary.Span.Written.Insert(1, "x"));
            var after = GuideEditions.Read(edited, ThemeFiles.BuiltIn, null, memory).Draw(edited, memory).Pages().ToDictionary(f => f.Address, f => f.Basis!);
            var showing = before.Where(p => p.Html.Contains($">{HtmlText.Escape(entry.Summary.Value)}<", StringComparison.Ordinal)).ToList();

            Assert.NotEmpty(showing);
            Assert.All(showing, p => Assert.True(p.Basis.DigestBy(p.Basis.Asked) != after[p.Address].DigestBy(p.Basis.Asked), $"{p.Address} shows {entry.Origin.Path}"));
        }
    }

    [Fact]
    public void A_code_follows_from_which_of_its_neighbours_have_a_page() =>
        AssertFollows("codes/p0234.html", new Overlay(Guides.Open(Guides.Small)), g => g.Append("content/symptoms/reduced-power.md", "\nIt may store P0235 as well.\n"));

    [Fact]
    public void Every_page_follows_from_whether_there_is_a_feed()
    {
        const string Reviewed = "reviewed: 2026-04-18\n", Check = "content/checks/pressure-test.md";
        var guide = new Overlay(Guides.Open(Guides.Small)).Append("site-config.yml", "base: https://club.example/loris/guide/\n").Replace(Check, Reviewed, "")
            .Replace("content/faults/charge-air-hose-split.md", "reviewed: 2026-05-02\n", "");

        AssertFollows("safety.html", guide, g => g.Replace(Check, "sources:", Reviewed + "sources:"));
    }

    [Fact]
    public void A_tree_that_the_tool_builds_follows_from_all_weights()
    {
        var guide = new Overlay(Guides.Open(Guides.Demo));
        var (built, written) = (ItemOf(guide, "trees/black-smoke-least-cost"), ItemOf(guide, "trees/black-smoke"));

        guide.Replace("content/faults/ac-gas-lost.md", "belief: 4\n", "belief: 5\n");

        Assert.NotEqual(built, ItemOf(guide, "trees/black-smoke-least-cost"));
        Assert.Equal(written, ItemOf(guide, "trees/black-smoke"));
    }

    static Digest? ItemOf(IGuideFiles guide, string item) => new ItemDigests(SitePlan.Make(GuideLoader.Load(guide).Guide), GuideMemory.None).Of(item);

    /// <summary>The page looks otherwise after the edit, and its basis says so.</summary>
    static void AssertFollows(string page, Overlay guide, Func<Overlay, Overlay> edit)
    {
        var before = SiteOf(Guides.ReadAll(guide))!.Single(f => f.Address == page);
        var drawn = before.Read();

        var after = SiteOf(Guides.ReadAll(edit(guide)))!.Single(f => f.Address == page);

        Assert.NotEqual(before.Basis!.DigestBy(before.Basis.Asked), after.Basis!.DigestBy(before.Basis.Asked));
        Assert.NotEqual(Text(drawn), Text(after.Read()));
    }

    /// <returns>All that has a basis; null for a guide with errors.</returns>
    static List<SiteFile>? SiteOf(SortedDictionary<string, byte[]> files)
    {
        var guide = new MemoryFiles(files);
        var read = GuideEditions.Read(guide, ThemeFiles.BuiltIn);
        return read.HasErrors ? null : [.. read.Draw(guide).All().Where(f => f.Basis is not null)];
    }

    static SortedDictionary<string, byte[]> Changed(SortedDictionary<string, byte[]> files, string path, int at, Func<string, string> slip)
    {
        var lines = Text(files[path]).Split('\n');
        lines[at] = slip(lines[at]);
        return new(files, StringComparer.Ordinal) { [path] = Encoding.UTF8.GetBytes(string.Join('\n', lines)) };
    }

    static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);

    [GeneratedRegex("[0-9]{1,6}")]
    private static partial Regex Figure();

    [GeneratedRegex("always|usually|sometimes|rarely")]
    private static partial Regex Frequency();

    [GeneratedRegex(@"[\[{][^,\[{]*,")]
    private static partial Regex FirstOfSeveral();
}
