using System.Text;
using System.Text.RegularExpressions;
using GuideGen.Site.Rendering;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>What a reader of the small guide gets, byte by byte. Accept a wanted change as <see cref="Golden"/> says.</summary>
public sealed partial class GoldenSiteTests
{
    const string Assets = "assets/";

    /// <summary>The service worker speaks for itself at the root of the site, with the list of files in front of it.</summary>
    const string Worker = "keep.js";

    /// <summary>Lists of standard codes are the same for every guide, and long: one of them stands for all.</summary>
    const string OneCodeList = "codes/p02.html";

    [Fact]
    public void The_small_guide_becomes_the_expected_site()
    {
        var made = CompiledSite.Of(Guides.Small).Files
            .Where(f => !f.Key.StartsWith(Assets, StringComparison.Ordinal) && (f.Key == OneCodeList || !HasTestsOfItsOwn().IsMatch(f.Key)))
            .ToDictionary(f => f.Key, f => WithoutHashes(f.Key, f.Value));

        Assert.Empty(Golden.Differences(Repository.PathTo("tests", "GuideGen.Site.Tests", "Golden"), made));
    }

    // The theme's own files are not in the golden folder a second time: here they are compared where they come from.
    [Fact]
    public void Styles_and_scripts_are_the_files_of_the_theme()
    {
        var theme = ThemeFiles.BuiltIn;
        var expected = theme.Below("style").Concat(theme.Below("script")).Where(f => Path.GetFileName(f) != Worker).Select(f => Assets + Path.GetFileName(f)).Order(StringComparer.Ordinal);
        var made = CompiledSite.Of(Guides.Small).Files.Where(f => f.Key.StartsWith(Assets, StringComparison.Ordinal)).ToDictionary(f => Hash().Replace(f.Key, "."), f => f.Value);

        Assert.Equal(expected, made.Keys.Order(StringComparer.Ordinal));
        Assert.All(made.Where(m => m.Key != "assets/load.js"), m => Assert.Equal(File.ReadAllBytes(FileOf(m.Key)), m.Value));
    }

    /// <summary>A change of a style would otherwise change every page.</summary>
    static byte[] WithoutHashes(string address, byte[] bytes) =>
        address.EndsWith(".html", StringComparison.Ordinal) || address.EndsWith(".webmanifest", StringComparison.Ordinal)
            ? Encoding.UTF8.GetBytes(AssetHash().Replace(Encoding.UTF8.GetString(bytes), "."))
            : bytes;

    // Lists of codes, the pieces of the search and the worker, whose names and hashes change with every word of the guide.
    [GeneratedRegex("^(codes/...[.]|data/(codes/|standard-codes|site)|search/|keep[.])")]
    private static partial Regex HasTestsOfItsOwn();

    [GeneratedRegex("[.][0-9a-f]{8}[.]")]
    private static partial Regex Hash();

    [GeneratedRegex("(?<=assets/[a-z0-9-]+)[.][0-9a-f]{8}[.]")]
    private static partial Regex AssetHash();

    static string FileOf(string address) =>
        Directory.EnumerateFiles(Repository.PathTo("themes", "workshop"), Path.GetFileName(address), SearchOption.AllDirectories).Single();
}
