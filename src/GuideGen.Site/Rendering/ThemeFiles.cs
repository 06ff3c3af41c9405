using System.Collections.Frozen;

namespace GuideGen.Site.Rendering;

/// <summary>The files of a theme, by their path in it with forward slashes.</summary>
public sealed class ThemeFiles
{
    const string Prefix = "theme/";

    readonly FrozenDictionary<string, byte[]> files;

    public ThemeFiles(IEnumerable<KeyValuePair<string, byte[]>> files) => this.files = files.ToFrozenDictionary();

    /// <summary>The default look, which is built into the tool.</summary>
    public static ThemeFiles BuiltIn { get; } = ReadBuiltIn();

    public IEnumerable<string> Below(string folder) =>
        files.Keys.Where(k => k.StartsWith(folder + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public byte[] Bytes(string path) => files[path];

    public string Text(string path) => System.Text.Encoding.UTF8.GetString(files[path]);

    public bool Has(string path) => files.ContainsKey(path);

    static ThemeFiles ReadBuiltIn()
    {
        var assembly = typeof(ThemeFiles).Assembly;
        return new ThemeFiles(
            from name in assembly.GetManifestResourceNames()
            where name.StartsWith(Prefix, StringComparison.Ordinal)
            select KeyValuePair.Create(name[Prefix.Length..], ReadAll(assembly.GetManifestResourceStream(name)!)));
    }

    static byte[] ReadAll(Stream stream)
    {
        using (stream)
        {
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            return bytes;
        }
    }
}
