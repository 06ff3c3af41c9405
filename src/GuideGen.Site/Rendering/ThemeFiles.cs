using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Rendering;

/// <summary>The files of a theme, by their path in it with forward slashes.</summary>
public sealed class ThemeFiles
{
    const string Prefix = "theme/";

    readonly FrozenDictionary<string, byte[]> files;

    ThemeFiles(IEnumerable<KeyValuePair<string, byte[]>> files, ImmutableSortedDictionary<string, SourceText> pieces)
    {
        this.files = files.ToFrozenDictionary();
        Pieces = pieces;
    }

    public ThemeFiles(IEnumerable<KeyValuePair<string, byte[]>> files)
        : this(files, ImmutableSortedDictionary<string, SourceText>.Empty)
    {
    }

    /// <summary>The default look, which is built into the tool.</summary>
    public static ThemeFiles BuiltIn { get; } = ReadBuiltIn();

    /// <summary>Those that a guide brings itself.</summary>
    public ImmutableSortedDictionary<string, SourceText> Pieces { get; }

    public IEnumerable<string> Below(string folder) =>
        files.Keys.Where(k => k.StartsWith(folder + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <summary>Of all paths and contents.</summary>
    public Digest Digest()
    {
        using var all = new Digester();
        foreach (var (path, bytes) in files.OrderBy(f => f.Key, StringComparer.Ordinal)) all.Add(path).Add(bytes);
        return all.Take();
    }

    public byte[] Bytes(string path) => files[path];

    public string Text(string path) => System.Text.Encoding.UTF8.GetString(files[path]);

    public bool Has(string path) => files.ContainsKey(path);

    /// <summary>The same theme with a guide's pieces in it, each in the place of the file of the same path.</summary>
    public ThemeFiles With(ImmutableSortedDictionary<string, SourceText> pieces)
    {
        var all = new Dictionary<string, byte[]>(files);
        foreach (var (path, text) in pieces) all[path] = System.Text.Encoding.UTF8.GetBytes(text.Text);
        return new ThemeFiles(all, pieces);
    }

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
