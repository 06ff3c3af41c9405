using System.Globalization;
using GuideGen.Site.Asking;
using GuideGen.Site.Planning;
using GuideGen.Site.Publishing;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The same page in the other languages of the guide.</summary>
static class EditionViews
{
    /// <summary>Adds to <c>page</c>: editions (none for a guide in one language), site_root, and written_in for a page that is not translated.</summary>
    public static void AddTo(ScriptObject page, ViewContext view, PlannedPage planned)
    {
        var guide = view.Guide;
        var siteRoot = view.Links.Root + (guide.Folder.Length == 0 ? "" : "../");
        page["editions"] = new ScriptArray(guide.Editions.Length < 2 ? [] : guide.Editions.Select(language => new ScriptObject
        {
            ["language"] = language,
            ["name"] = NameOf(language),
            ["href"] = siteRoot + SitePlan.FolderOf(guide.Editions, language) + planned.Address,
            ["canonical"] = planned is MovedPage ? null : CanonicalIn(guide, language, planned.Address),
            ["is_here"] = language == guide.Settings.Language.Value,
        }));
        page["to_site_root"] = guide.Folder.Length == 0 ? "" : "../";
        page["written_in"] = planned.Shown?.Origin.Body.Language is { } written && written != guide.Settings.Language.Value ? written : null;
    }

    /// <summary>As its speakers call it.</summary>
    static string NameOf(string language)
    {
        var culture = CultureInfo.GetCultureInfo(language);
        return culture.TextInfo.ToTitleCase((culture.IsNeutralCulture ? culture : culture.Parent).NativeName);
    }

    static string? CanonicalIn(AskedGuide guide, string language, string address)
    {
        if (guide.Settings.Base is not { } own) return null;
        var root = SitePlan.FolderOf(guide.Editions, guide.Settings.Language.Value).Length == 0 ? own.Value : new Uri(own.Value, "../");
        var folder = SitePlan.FolderOf(guide.Editions, language);
        return PublicAddress.Of(folder.Length == 0 ? root : new Uri(root, folder), address);
    }
}
