using System.Text;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Testing;
using Scriban.Runtime;

namespace GuideGen.Site.Tests.Themes;

/// <summary>What templates are given is written down, and what is written down is what they are given.</summary>
public sealed class ContractTests
{
    const string Head =
        """
        # What a template is given

        Every template is given `page` and `site`, which are the same for all kinds of page, and what its own kind of page has.
        A piece sees all of that as well, and what it was called with as `it`. `words` are the wordings of the theme's language,
        `piece` draws another template, `fill` puts values into a wording's places.

        - *text* is escaped when it is printed; *markup* is HTML that the tool made and that is printed as it stands.
        - *none* beside a kind says that the value may be missing on some pages.
        - `name[]` is what each item of a list has.

        This list is drawn from all pages of the demo guide, and of a small one in two languages, and held by a test. A name in it stays and keeps its meaning;
        names may be added.


        """;

    [Fact]
    public void The_list_is_true()
    {
        var shapes = new SortedDictionary<string, ValueShape>(StringComparer.Ordinal);
        GuideContent[] guides = [CompiledSite.Of(Guides.Published).Guide, CompiledSite.Of(Guides.Demo).Guide, GuideLoader.LoadIn(BothLanguages.Guide(), "de").Guide];
        foreach (var content in guides)
        {
            var plan = SitePlan.Make(content);
            var renderer = new SiteRenderer(plan, GuideTheme.Of(ThemeFiles.BuiltIn, content).Theme);
            foreach (var page in plan.Pages)
            {
                var model = renderer.ModelOf(page);
                Shape("every page").Take(new ScriptObject { ["page"] = model["page"], ["site"] = model["site"] });
                model.Remove("page");
                model.Remove("site");
                Shape(page.Template).Take(model);
            }
        }

        var list = new StringBuilder(Head);
        foreach (var (template, shape) in shapes)
        {
            list.Append(System.Globalization.CultureInfo.InvariantCulture, $"## {template}\n\n");
            foreach (var (name, kind) in shape.Lines("")) list.Append(System.Globalization.CultureInfo.InvariantCulture, $"- `{name}` {kind}\n");
            list.Append('\n');
        }

        var made = new Dictionary<string, byte[]> { ["templates.md"] = Encoding.UTF8.GetBytes(list.ToString().TrimEnd() + "\n") };
        Assert.Empty(Golden.Differences(Repository.PathTo("themes", "contract"), made));

        ValueShape Shape(string name) => shapes.TryGetValue(name, out var shape) ? shape : shapes[name] = new ValueShape();
    }

    /// <summary>What one value was on all pages together.</summary>
    sealed class ValueShape
    {
        readonly SortedSet<string> kinds = new(StringComparer.Ordinal);
        readonly SortedDictionary<string, ValueShape> inner = new(StringComparer.Ordinal);
        ValueShape? item;
        int taken;

        public void Take(object? value)
        {
            taken++;
            switch (value)
            {
                case ScriptObject group:
                    kinds.Add("group");
                    foreach (var key in group.Keys) Inner(key).Take(group[key]);
                    break;
                case System.Collections.IEnumerable list and not string:
                    kinds.Add("list");
                    item ??= new ValueShape();
                    foreach (var one in list) item.Take(one);
                    break;
                default:
                    kinds.Add(KindOf(value));
                    break;
            }
        }

        public IEnumerable<(string Name, string Kind)> Lines(string name)
        {
            if (name.Length > 0) yield return (name, string.Join(" or ", kinds.Order(StringComparer.Ordinal).OrderBy(k => k == "none")));
            foreach (var (key, shape) in inner)
            {
                if (shape.taken < taken) shape.kinds.Add("none");
                foreach (var line in shape.Lines(name.Length == 0 ? key : $"{name}.{key}")) yield return line;
            }

            if (item is null) yield break;
            foreach (var line in item.Lines(name + "[]")) yield return line;
        }

        ValueShape Inner(string key) => inner.TryGetValue(key, out var shape) ? shape : inner[key] = new ValueShape();

        static string KindOf(object? value) => value switch
        {
            null => "none",
            HtmlText => "markup",
            string => "text",
            bool => "yes or no",
            int or long or double or decimal => "number",
            _ => throw new InvalidOperationException($"a template is given {value.GetType()}, which the contract does not know"),
        };
    }
}
