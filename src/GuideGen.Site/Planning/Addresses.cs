using GuideGen.Codes;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Planning;

/// <summary>Addresses of pages: relative to the site's root, with forward slashes, ending in .html.</summary>
public static class Addresses
{
    /// <summary>Whose work the site carries, and under which terms.</summary>
    public const string About = "about.html";

    public const string Evidence = "evidence.html";

    public const string Home = "index.html";

    public const string NotFound = "404.html";

    public const string Report = "report.html";

    /// <summary>Which part sits in which path.</summary>
    public const string Map = "map.html";

    /// <summary>The sheet of paper for before and after a repair.</summary>
    public const string Record = "record.html";

    /// <summary>The page that weighs the causes of codes and symptoms at hand.</summary>
    public const string Weigh = "weigh.html";

    /// <summary>The page on which an owner writes down a solved case.</summary>
    public const string CaseForm = "report-a-case.html";

    public const string Safety = "safety.html";

    public const string Terms = "terms.html";

    /// <summary>The page that says what each condition of a standard code means.</summary>
    public const string Conditions = "codes/conditions.html";

    public const string Rules = "rules.html";

    /// <summary>Help for those who write for the guide.</summary>
    public const string Writing = "writing.html";

    /// <summary>Help for those who write pages of a kind.</summary>
    public static string OfWriting(ContentKind kind) => $"writing/{NameKinds.Word(kind)}.html";

    public static string Of(IGuideEntry entry) => Of(entry.Origin.Kind!.Value, entry.Origin.Slug);

    public static string Of(ContentKind kind, string slug) => $"{NameKinds.Folder(kind)}/{slug.ToLowerInvariant()}.html";

    /// <summary>The page that lists every code of a group of three characters.</summary>
    public static string OfGroup(string name) => Of(ContentKind.Code, name);

    /// <summary>Where a code stands on the page of its group.</summary>
    public static string AnchorOf(TroubleCode code) => code.ToString().ToLowerInvariant();

    public static string Of(TroubleCode code) => Of(ContentKind.Code, code.ToString());

    /// <summary>The page that lists all entries of a kind.</summary>
    public static string ListOf(ContentKind kind) => NameKinds.Folder(kind) + ".html";

    /// <summary>The way from one page to another, both relative to the site's root.</summary>
    public static string Relative(string from, string to)
    {
        var (here, there) = (from.Split('/'), to.Split('/'));
        var same = 0;
        while (same < here.Length - 1 && same < there.Length - 1 && here[same] == there[same]) same++;
        return string.Concat(Enumerable.Repeat("../", here.Length - 1 - same)) + string.Join('/', there[same..]);
    }
}
