using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Loading;

/// <summary>A file that says in another language what a file of the guide says: <c>x.de.md</c> beside <c>x.md</c>.</summary>
/// <param name="Language">Language tag (BCP 47), as it stands in the name.</param>
/// <param name="Of">Path of the file whose words it translates.</param>
public sealed partial record Translation(string Path, string Language, string Of)
{
    public static bool TryParse(string path, [NotNullWhen(true)] out Translation? translation)
    {
        var match = Name().Match(path);
        var of = match.Groups["name"].Value + match.Groups["ending"].Value;
        translation = match.Success && IsTranslatable(of) ? new Translation(path, match.Groups["tag"].Value, of) : null;
        return translation is not null;
    }

    // What owners report is theirs, in the language they wrote it in.
    static bool IsTranslatable(string path) =>
        FileSorting.SingleFiles.Contains(path)
        || FileSorting.TryKind(path, out var kind) && kind is not ContentKind.Case;

    [GeneratedRegex(@"^(?<name>.*[^/.])\.(?<tag>[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3})(?<ending>\.md|\.yml)$", RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}
