using System.Collections.Immutable;

namespace GuideGen.Site.Drafting;

/// <summary>A small guide about an invented vehicle, with one example of every kind: the beginning of a new guide, and the worked examples of the writers' help.</summary>
public static class StarterGuide
{
    const string Prefix = "starter/";

    /// <summary>Path in the guide, and text.</summary>
    public static ImmutableSortedDictionary<string, string> Files { get; } = ReadAll();

    /// <exception cref="IOException">The folder cannot be written, or one of the files is there already.</exception>
    public static void Write(string folder)
    {
        foreach (var (path, text) in Files)
        {
            var file = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            using var stream = new FileStream(file, FileMode.CreateNew);
            stream.Write(System.Text.Encoding.UTF8.GetBytes(text));
        }
    }

    static ImmutableSortedDictionary<string, string> ReadAll()
    {
        var assembly = typeof(StarterGuide).Assembly;
        return assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .ToImmutableSortedDictionary(n => n[Prefix.Length..], n => Text(assembly.GetManifestResourceStream(n)!), StringComparer.Ordinal);
    }

    static string Text(Stream stream)
    {
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
