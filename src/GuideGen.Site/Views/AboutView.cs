using GuideGen.Search;
using GuideGen.Site.Licences;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>Whose work a site carries and under which terms, and what the tool that made it is built on.</summary>
static class AboutView
{
    public static ScriptObject Of(ViewContext view) => new()
    {
        ["name"] = view.Words["about.title"],
        ["summary"] = view.Words["about.summary"],
        ["rights"] = view.Guide.Settings.Rights?.Value,
        ["carried"] = new ScriptArray
        {
            Carried("GuideGen", view.Words["about.carried-tool"], LicenceTexts.Own),
            Carried($"lunr {LunrScript.Version}", view.Words["about.carried-search"], LunrScript.Licence),
        },
        ["libraries"] = new ScriptArray(ShippedPackage.Of(typeof(AboutView).Assembly).Select(p => new ScriptObject
        {
            ["name"] = p.Name,
            ["version"] = p.Version,
            ["licence"] = p.Licence,
            ["holder"] = p.Holder,
        })),
    };

    static ScriptObject Carried(string name, string what, string terms) => new()
    {
        ["name"] = name,
        ["what"] = what,
        ["licence"] = "MIT",
        ["terms"] = new ScriptArray(LicenceTexts.Paragraphs(terms)),
    };
}
