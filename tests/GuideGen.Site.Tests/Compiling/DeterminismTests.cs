using System.Globalization;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>Same input, same bytes: whatever the machine is set to and however many hands it has.</summary>
public sealed class DeterminismTests
{
    public static TheoryData<string, string, int> Settings => new(
        from guide in new[] { Guides.Small, Guides.Demo }
        from setting in new[] { ("en-GB", 1), ("en-GB", 8), ("tr-TR", 1), ("tr-TR", 8), ("de-DE", 8), ("ar-SA", 8) }
        select (guide, setting.Item1, setting.Item2));

    [Theory, MemberData(nameof(Settings))]
    public void Every_setting_yields_the_same_bytes(string guide, string culture, int threads)
    {
        var expected = CompiledSite.Of(guide).Files;

        var made = Under(culture, () => CompiledSite.Compile(Guides.Open(guide), threads)).Files;

        Assert.Equal(expected.Keys, made.Keys);
        Assert.Empty(expected.Where(e => !e.Value.AsSpan().SequenceEqual(made[e.Key])).Select(e => e.Key));
    }

    [Fact]
    public void Two_compiles_in_a_row_write_the_same_files()
    {
        using var folder = new TempFolder();
        string[] places = [folder.PathTo("one"), folder.PathTo("two")];

        foreach (var place in places)
        {
            SiteCompiler.Compile(Guides.Open(Guides.Small), ThemeFiles.BuiltIn, new FolderTarget(place, 4), new CompiledSite.Unheard());
        }

        Assert.Equal(Snapshot(places[0]), Snapshot(places[1]));
    }

    static List<string> Snapshot(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => $"{Path.GetRelativePath(folder, f)} {Convert.ToHexStringLower(SiteManifest.HashOf(File.ReadAllBytes(f)))}"),
    ];

    static CompiledSite Under(string culture, Func<CompiledSite> compile)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            return compile();
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }
}
