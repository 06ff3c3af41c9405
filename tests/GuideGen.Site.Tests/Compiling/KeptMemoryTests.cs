using System.Text;
using CsCheck;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>What a compile takes over from the one before is what it would have made.</summary>
public sealed class KeptMemoryTests
{
    static readonly DateOnly Today = new(2026, 6, 1);

    /// <summary>What happens to the files beside a site between two compiles.</summary>
    static readonly Action<SitePaths>[] Mishaps =
    [
        _ => { },
        _ => { },
        p => File.Delete(p.Memory),
        p => File.Delete(p.Origins),
        p => Spoil(p.Memory),
        p => Spoil(p.Origins),
        p => Delete(Path.Combine(p.Site, "faults")),
        p => Delete(p.Site),
    ];

    [Fact]
    public void After_each_edit_the_site_is_that_of_a_first_compile() => Gen.Select(GuideEdits.Sitting, Gen.Int[0, Mishaps.Length - 1].Array[11]).Sample(
        (sitting, mishaps) =>
        {
            using var temp = new TempFolder();
            var paths = new SitePaths(temp.PathTo("out"));
            foreach (var ((done, files), mishap) in GuideEdits.After(sitting).Zip(mishaps))
            {
                var clean = new MemoryTarget(2);
                var expected = SiteCompiler.Compile(new MemoryFiles(files), ThemeFiles.BuiltIn, clean, new CompiledSite.Unheard(), Today);
                var before = Below(paths.Site);
                var made = Compile(files, paths.Site);

                Assert.Equal([done, .. Lines(expected)], [done, .. Lines(made)]);
                Assert.Equal([done, .. expected.IsWritten ? Lines(clean.Files) : before], [done, .. Below(paths.Site)]);
                Mishaps[mishap](paths);
            }
        },
        iter: Tries.Of(20),
        print: s => string.Join("; ", GuideEdits.After(s.Item1).Select(e => e.Done)) + " / " + string.Join(' ', s.Item2));

    [Fact]
    public void A_compile_of_the_same_guide_writes_only_what_depends_on_all_text() => Assert.All(
        MadeAfter("put everything back"),
        f => Assert.True(f.StartsWith("search/", StringComparison.Ordinal) || f is "keep.js" or "guide-files.txt" or "data/site.js", f));

    [Theory]
    [InlineData("say more", "faults/charge-air-hose-split.html")]
    [InlineData("sum a fault up otherwise", "checks/look-over.html checks/pressure-test.html codes/p0299.html codes/p1a42.html faults.html faults/charge-air-hose-split.html index.html parts/charge-air-hose.html report-a-case.html symptoms/engine-lamp.html symptoms/reduced-power.html trees/engine-lamp.html trees/reduced-power.html")]
    [InlineData("believe in a fault more", "checks/look-over.html checks/pressure-test.html codes/p0299.html codes/p1a42.html evidence.html faults.html faults/battery-earth-loose.html faults/charge-air-hose-split.html index.html parts/charge-air-hose.html report-a-case.html symptoms/engine-lamp.html symptoms/reduced-power.html trees/engine-lamp.html trees/reduced-power.html")]
    [InlineData("call a part otherwise", "checks/pressure-test.html faults/charge-air-hose-split.html map.html parts.html parts/charge-air-hose.html")]
    [InlineData("let a check take longer", "checks.html checks/pressure-test.html evidence.html faults/charge-air-hose-split.html index.html parts/charge-air-hose.html report-a-case.html trees/reduced-power.html weigh.html")]
    public void An_edit_has_only_those_pages_drawn_that_can_show_it(string edit, string pages) =>
        Assert.Equal(pages, string.Join(' ', MadeAfter(edit).Where(f => f.EndsWith(".html", StringComparison.Ordinal))));

    [Fact]
    public void A_tree_has_other_figures_once_a_fault_is_likelier_that_it_does_not_show()
    {
        const string Fault = "content/faults/battery-earth-loose.md";
        using var temp = new TempFolder();
        var clean = new MemoryTarget(2);
        var files = GuideEdits.After([]).Single().Files;
        Change("symptoms: {", "symptoms: { reduced-power: usually,");
        Compile(files, temp.PathTo("out"));
        Change("belief: ", "belief: 10");

        Compile(files, temp.PathTo("out"));

        SiteCompiler.Compile(new MemoryFiles(files), ThemeFiles.BuiltIn, clean, new CompiledSite.Unheard(), Today);
        Assert.Equal(Lines(clean.Files), Below(temp.PathTo("out")));

        void Change(string from, string to) => files[Fault] = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(files[Fault]).Replace(from, to, StringComparison.Ordinal));
    }

    /// <returns>The files that a second compile wrote, after an edit.</returns>
    static IEnumerable<string> MadeAfter(string edit)
    {
        using var temp = new TempFolder();
        var site = temp.PathTo("out");
        var sitting = GuideEdits.After(GuideEdits.Of(edit)).ToList();
        Compile(sitting[0].Files, site);
        var old = new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        foreach (var file in Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories)) File.SetLastWriteTimeUtc(file, old);

        Assert.True(Compile(sitting[1].Files, site).IsWritten);

        return [.. Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories).Where(f => File.GetLastWriteTimeUtc(f) != old).Select(f => Path.GetRelativePath(site, f).Replace(Path.DirectorySeparatorChar, '/')).Order(StringComparer.Ordinal)];
    }

    static CompileResult Compile(SortedDictionary<string, byte[]> files, string site)
    {
        var memory = FolderTarget.MemoryOf(site);
        return SiteCompiler.Compile(new MemoryFiles(files), ThemeFiles.BuiltIn, new FolderTarget(site, 2, memory), new CompiledSite.Unheard(), Today, memory);
    }

    static IEnumerable<string> Lines(CompileResult result) => result.Findings.Select(f => $"{FindingFormatter.ToLine(f)} {f.Hint}");

    static IReadOnlyList<string> Lines(IEnumerable<KeyValuePair<string, byte[]>> files) =>
        [.. files.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => $"{f.Key} {Convert.ToHexStringLower(SiteManifest.HashOf(f.Value))}")];

    static IReadOnlyList<string> Below(string folder) => !Directory.Exists(folder) ? [] : Lines(
        from file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        let address = Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/')
        where address != SiteManifest.FileName
        select KeyValuePair.Create(address, File.ReadAllBytes(file)));

    static void Spoil(string path)
    {
        if (!File.Exists(path)) return;
        var bytes = File.ReadAllBytes(path);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(path, bytes);
    }

    static void Delete(string folder)
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    sealed record SitePaths(string Site)
    {
        public string Memory => Beside("memory");

        public string Origins => Beside("origins");

        string Beside(string what) => Path.Combine(Path.GetDirectoryName(Site)!, $".{Path.GetFileName(Site)}.guidegen-{what}");
    }
}
