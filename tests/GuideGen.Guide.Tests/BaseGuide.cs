using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

/// <summary>A small guide without findings, over which a test lays its own files.</summary>
static class BaseGuide
{
    static readonly Dictionary<string, byte[]> Originals = ReadAll();

    /// <summary>The day on which the guide is inspected.</summary>
    static readonly DateOnly Today = new(2026, 6, 1);

    public static Dictionary<string, byte[]> Files() => new(Originals);

    public static string Text(string path) => Encoding.UTF8.GetString(Originals[path]);

    /// <summary>What the inspection finds in the base guide with one file changed or added.</summary>
    public static IReadOnlyList<Finding> InspectWith(string path, byte[] content) => Inspect(new(Originals) { [path] = content });

    public static IReadOnlyList<Finding> InspectWith(string path, string content) => InspectWith(path, Encoding.UTF8.GetBytes(content));

    public static IReadOnlyList<Finding> Inspect(Dictionary<string, byte[]> files) =>
        GuideInspector.Inspect(GuideLoader.Load(new MemoryFiles(files)), Today);

    static Dictionary<string, byte[]> ReadAll()
    {
        var folder = Repository.PathTo("tests", "GuideGen.Guide.Tests", "BaseGuide");
        return Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            f => Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllBytes);
    }
}
