using System.Text;

namespace GuideGen.Guide.Tests.Rows;

/// <summary>One row of a table of bad inputs: files laid over the base guide, and the exact findings.</summary>
/// <param name="Expected">As <see cref="RowFile.Print"/> writes them.</param>
public sealed record Row(string Name, Dictionary<string, string?> Files, Dictionary<string, string> Edits, string Expected)
{
    public Dictionary<string, byte[]> Overlay(LineEnding ending)
    {
        var files = BaseGuide.Files();
        foreach (var (path, edit) in Edits) files[path] = Encoding.UTF8.GetBytes(Edit.Apply(Encoding.UTF8.GetString(files[path]), edit));
        foreach (var (path, text) in Files.Where(f => f.Value is not null)) files[path] = Encoding.UTF8.GetBytes(text!);
        foreach (var (path, _) in Files.Where(f => f.Value is null)) files.Remove(path);
        return files.ToDictionary(f => f.Key, f => ending.Encode(f.Value));
    }

    public override string ToString() => Name;
}

/// <summary>How the lines of all files end, and whether they begin with a byte order mark.</summary>
public sealed record LineEnding(string Name, string Mark, bool HasByteOrderMark)
{
    public static IReadOnlyList<LineEnding> All { get; } =
    [
        new("LF", "\n", false), new("CR LF", "\r\n", false), new("lone CR", "\r", false), new("CR LF with byte order mark", "\r\n", true),
    ];

    public byte[] Encode(byte[] file)
    {
        var text = Encoding.UTF8.GetString(file).Replace("\n", Mark, StringComparison.Ordinal);
        return [.. HasByteOrderMark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)];
    }

    public override string ToString() => Name;
}
