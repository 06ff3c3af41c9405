using GuideGen.Testing;

namespace GuideGen.Browser.Tests;

/// <summary>A guide of a few pages, to be changed by a test.</summary>
static class FixtureGuide
{
    static string Folder => Repository.PathTo("tests", "GuideGen.Site.Tests", "Fixture");

    public static void CopyTo(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
