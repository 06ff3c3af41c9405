using GuideGen.Site.Planning;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class MovedView
{
    public static ScriptObject Of(ViewContext view, MovedPage page) => new()
    {
        ["name"] = view.Fill("publish.moved-title", page.Address),
        ["summary"] = view.Words["publish.moved-text"],
        ["to"] = page.To.Name.Value,
    };
}
