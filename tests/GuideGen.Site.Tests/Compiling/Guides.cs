using GuideGen.Guide.Loading;
using GuideGen.Site.Tests.Themes;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>The guides that the tests compile.</summary>
static class Guides
{
    /// <summary>A few pages of each kind.</summary>
    public const string Small = "small";

    /// <summary>The same pages for a host whose address is known, some of them renamed.</summary>
    public const string Published = "published";

    /// <summary>The same pages with an edition in German, into which some of them are translated.</summary>
    public const string Translated = "translated";

    /// <summary>The demo guide of this repository.</summary>
    public const string Demo = "demo";

    /// <summary>A guide in which every text is an attack on the page it ends up on.</summary>
    public const string Hostile = "hostile";

    public static string FolderOf(string guide) => guide switch
    {
        Small => Repository.PathTo("tests", "GuideGen.Site.Tests", "Fixture"),
        Hostile => Repository.PathTo("tests", "GuideGen.Site.Tests", "Hostile"),
        Demo => Repository.Root,
        _ => throw new ArgumentOutOfRangeException(nameof(guide)),
    };

    public static IGuideFiles Open(string guide) => guide switch
    {
        Published => OpenPublished(),
        Translated => BothLanguages.Guide(),
        _ => new FolderFiles(FolderOf(guide)),
    };

    /// <summary>All files of a guide, to change some of them.</summary>
    public static SortedDictionary<string, byte[]> ReadAll(IGuideFiles guide) =>
        new(guide.Paths.ToDictionary(p => p, p => guide.TryRead(p, out var bytes, out var why) ? bytes : throw new InvalidOperationException(why)), StringComparer.Ordinal);

    static Overlay OpenPublished() => new Overlay(new FolderFiles(FolderOf(Small)))
        .Append("site-config.yml", "base: https://club.example/loris/guide/\n")
        .Replace("content/parts/charge-air-hose.md", "system: air\n", "system: air\nreviewed: 2026-06-09\nformerly: [parts/boost-hose.html, parts/big-pipe.html]\n")
        .Replace("content/tasks/read-codes.md", "\n---\n", "\nreviewed: 2026-07-01\n---\n");
}
