using System.Collections.Frozen;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>The files with which a guide changes its look: each stands in the place of the built-in one of the same path.</summary>
static class ThemePieces
{
    public const string Folder = "theme";

    static readonly FrozenDictionary<string, string[]> Endings = new Dictionary<string, string[]>
    {
        ["templates"] = [".html"],
        ["words"] = [".yml"],
        ["style"] = [".css", ".svg"],
        ["script"] = [".js"],
    }.ToFrozenDictionary();

    public static bool IsPiece(string path) => path.StartsWith(Folder + "/", StringComparison.Ordinal);

    /// <returns>Null if it can be a piece of a theme.</returns>
    public static Finding? Objection(string path)
    {
        var parts = path.Split('/');
        var isKnown = parts.Length == 3 && Endings.TryGetValue(parts[1], out var endings) && endings.Contains(Path.GetExtension(path), StringComparer.Ordinal);
        return isKnown ? null : Rules.ThemeFile.At(new SourceText(path, "").Top, path);
    }
}
