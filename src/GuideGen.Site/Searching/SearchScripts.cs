using System.Collections.Immutable;
using GuideGen.Search;
using GuideGen.Search.Shards;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Views;

namespace GuideGen.Site.Searching;

/// <summary>The search of a site: lunr itself, the shards, and where the first one is.</summary>
/// <param name="Head">Name of the shard that is loaded first.</param>
sealed record SearchScripts(string Head, ImmutableArray<SiteFile> Files)
{
    public const string Folder = "search/";

    public const string Lunr = "lunr-" + LunrScript.Version + ".js";

    /// <param name="recall">Gives what pages in a row came to in the index, or makes it.</param>
    public static SearchScripts Of(SitePlan plan, ViewContext view, Func<ImmutableArray<PlannedPage>, Func<byte[]>, byte[]> recall)
    {
        var documents = new SearchDocuments(plan, view);
        var index = SearchDocument.Index(
            documents.Pages.Length,
            i => documents.DocumentOf(documents.Pages[i]),
            (first, count, make) => recall(documents.Pages.Slice(first, count), make));
        var shards = SearchShards.Cut(index, [.. documents.Pages.Select(documents.CardOf)]);
        var files = shards.Files.Select(f => new SiteFile(Folder + f.Name, () => f.Script.ToArray()));
        return new SearchScripts(shards.Head, [new SiteFile(Folder + Lunr, Licensed), .. files]);
    }

    /// <summary>The script carries the licence it is given under.</summary>
    static byte[] Licensed() => System.Text.Encoding.UTF8.GetBytes($"/*\n{LunrScript.Licence.Trim()}\n*/\n{LunrScript.Text}");
}
