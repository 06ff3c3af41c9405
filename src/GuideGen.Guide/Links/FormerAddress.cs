using System.Collections.Frozen;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Links;

/// <summary>The address a page had before it was renamed: the folder of a kind, a slug and .html.</summary>
public static class FormerAddress
{
    const string Ending = ".html";

    /// <summary>Kinds whose pages an author names. A code's page is named after the code and never moves.</summary>
    public static FrozenSet<ContentKind> Kinds { get; } =
        new[] { ContentKind.Fault, ContentKind.Check, ContentKind.Symptom, ContentKind.Part, ContentKind.Task, ContentKind.Tree }.ToFrozenSet();

    static readonly FrozenSet<string> Folders = Kinds.Select(NameKinds.Folder).ToFrozenSet();

    public static string Of(ContentKind kind, string slug) => $"{NameKinds.Folder(kind)}/{slug}{Ending}";

    public static bool IsGood(string written) =>
        written.Split('/') is [var folder, var file] && Folders.Contains(folder) && file.EndsWith(Ending, StringComparison.Ordinal) && SlugForm.IsPlain(file[..^Ending.Length]);
}
