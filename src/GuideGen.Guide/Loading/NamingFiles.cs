using System.Buffers;
using System.Collections.Frozen;
using System.Text;
using GuideGen.Codes;

namespace GuideGen.Guide.Loading;

/// <summary>
/// The files of a guide, of which entries can be read only where they may name one of some codes, and pictures not at all. What the guide
/// says of those codes is the same as in all of its files.
/// </summary>
public sealed class NamingFiles : IGuideFiles
{
    readonly IGuideFiles files;
    readonly SearchValues<string> signs;
    readonly FrozenSet<string> naming;

    public NamingFiles(IGuideFiles files, IEnumerable<TroubleCode> codes)
    {
        this.files = files;
        // In structured text a code may also stand as \x50 and the like; in a page's running text it stands as it is.
        signs = SearchValues.Create([.. codes.Select(c => c.ToString()), "\\"], StringComparison.Ordinal);
        naming = [.. SideBySide.Map([.. files.Paths.Where(p => FileSorting.TryKind(p, out _))], p => Names(p) ? Original(p) : null).OfType<string>()];
    }

    public IReadOnlyList<string> Paths => files.Paths;

    public bool TryRead(string path, out byte[] bytes, out string why)
    {
        if (IsCommon(path) || naming.Contains(Original(path))) return files.TryRead(path, out bytes, out why);
        (bytes, why) = ([], "it names none of the codes");
        return false;
    }

    /// <summary>The path of an entry may name a code as well as its text.</summary>
    bool Names(string path) => path.AsSpan().ContainsAny(signs) || (files.TryRead(path, out var bytes, out _) && Encoding.Latin1.GetString(bytes).AsSpan().ContainsAny(signs));

    static bool IsCommon(string path) => FileSorting.SingleFiles.Contains(Original(path));

    /// <summary>A translation is read together with what it translates.</summary>
    static string Original(string path) => Translation.TryParse(path, out var own) ? own.Of : path;
}
