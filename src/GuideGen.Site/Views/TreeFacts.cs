using System.Globalization;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Trees;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>What stands on a tree's page beside its steps.</summary>
static class TreeFacts
{
    /// <summary>What the walk takes, a line for each variant.</summary>
    public static ScriptArray Costs(ViewContext view, Tree tree) =>
        [.. view.Guide.FiguresOf(tree).Select(f => Cost(view, f))];

    /// <summary>The variants that some question of the tree asks for; none if no question does.</summary>
    public static ScriptArray AskedVariants(ViewContext view, Tree tree)
    {
        var asked = tree.Nodes.Select(n => n.Value).OfType<AskNode>().Any(a => VariantAnswers.Of(view.Guide.Vehicle, tree, a) is not null);
        var variants = view.Guide.Vehicle.Variants.Where(v => asked && (tree.Variants.IsEmpty || tree.Variants.Any(t => t.Value == v.Key.Value)));
        return [.. variants.Select(v => new ScriptObject { ["slug"] = v.Key.Value, ["name"] = v.Value.Name.Value })];
    }

    public static ScriptObject Setup(ViewContext view, Setup setup) => new() { ["name"] = setup.Name.Value, ["minutes"] = view.Minutes(setup.Minutes.Value) };

    public static IEnumerable<Located<string>> HazardsOf(ViewContext view, DoNode step, Check check) =>
        TreeHazards.Of(view.Guide.Vehicle, step, check).Select(h => new Located<string>(h, step.Check.Span));

    static ScriptObject Cost(ViewContext view, TreeFigure figure) => new()
    {
        ["variant"] = view.VariantName(figure.Variant),
        ["expected"] = view.Minutes(figure.Expected),
        ["worst"] = view.Minutes(figure.Worst),
        ["money"] = figure.Money > 0 ? view.Money(new MoneyRange(0, figure.Money)) : null,
        ["found"] = figure.Found.ToString(CultureInfo.InvariantCulture),
    };
}
