using GuideGen.Guide.Loading;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>The guides that the tests compile.</summary>
static class Guides
{
    /// <summary>A few pages of each kind.</summary>
    public const string Small = "small";

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

    public static IGuideFiles Open(string guide) => new FolderFiles(FolderOf(guide));
}
