using GuideGen.Testing;
using Jint;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>Where a walk stands, as the browser's script works it out.</summary>
public sealed class WalkPathTests
{
    const string Tree = """
        const way = (to, more) => ({ to, unsure: false, variants: null, ...more });
        const tree = { start: "engine", steps: {
          engine: { kind: "ask", tools: [], ways: [way("look", { variants: ["w20d"] }), way("end", { variants: ["w16p", "w18h"] })] },
          look: { kind: "do", tools: ["torch"], ways: [way("hose"), way("press"), way("press", { unsure: true })] },
          press: { kind: "do", tools: ["gauge"], ways: [way("hose"), way("end"), way("end", { unsure: true })] },
          hose: { kind: "fault", tools: [], ways: [] }, end: { kind: "advice", tools: [], ways: [] } } };
        const tools = ["gauge", "torch"], variants = ["w20d", "w16p", "w18h"], none = { variant: "", missing: [] };
        const W = GuideGen.walkPath, hash = "walk=" + W.mark(tree);
        """;

    [Theory]
    [InlineData("W.follow(tree, [], none).at", "engine")]
    [InlineData("W.follow(tree, [0, 1], none).at", "press")]
    [InlineData("W.follow(tree, [0, 1, 0], none).at", "hose")]
    [InlineData("W.follow(tree, [0, 9, 0], none).at", "look")]
    [InlineData("W.follow(tree, [0, 1, 0, 5, 5], none).used", "3")]
    [InlineData("W.follow(tree, [1], { variant: 'w20d', missing: [] }).at", "press")]
    [InlineData("W.follow(tree, [], { variant: 'w16p', missing: [] }).at", "end")]
    [InlineData("W.follow(tree, [], { variant: 'w20d', missing: ['torch'] }).at", "press")]
    [InlineData("W.follow(tree, [], { variant: 'w20d', missing: ['torch', 'gauge'] }).at", "end")]
    [InlineData("W.follow(tree, [], { variant: 'w20d', missing: ['torch'] }).taken.map(t => t.by).join()", "variant,tool")]
    [InlineData("W.most(tree, 'engine', none)", "3")]
    [InlineData("W.most(tree, 'engine', { variant: 'w20d', missing: [] })", "2")]
    [InlineData("W.most(tree, 'engine', { variant: 'w20d', missing: ['gauge'] })", "1")]
    [InlineData("W.most(tree, 'hose', none)", "0")]
    public void Answers_lead_to_a_step(string question, string expected) => Assert.Equal(expected, Ask(question));

    [Theory]
    [InlineData("W.write(tree, [0, 1], { variant: 'w20d', missing: ['torch'] }, tools) === hash + '/0.1/w20d/1'", "true")]
    [InlineData("JSON.stringify(W.read(tree, '#' + W.write(tree, [1], { variant: 'w20d', missing: ['torch'] }, tools), tools, variants))", """{"answers":[1],"filter":{"variant":"w20d","missing":["torch"]},"stale":false}""")]
    [InlineData("JSON.stringify(W.read(tree, '#' + W.write(tree, [0, 1, 2], none, tools), tools, variants).answers)", "[0,1,2]")]
    public void A_link_carries_the_walk(string question, string expected) => Assert.Equal(expected, Ask(question));

    [Theory]
    [InlineData("''")]
    [InlineData("'#look'")]
    [InlineData("hash")]
    [InlineData("hash + '/0.1/w20d'")]
    [InlineData("hash + '/0.1/w20d/0/9'")]
    [InlineData("hash + '/0..1//'")]
    [InlineData("hash + '/-1//'")]
    [InlineData("hash + '/0.1e9//'")]
    [InlineData("hash + '/constructor//'")]
    [InlineData("hash + '/<img src=x onerror=alert(1)>//'")]
    [InlineData("hash + '/' + '0.'.repeat(400) + '0//'")]
    [InlineData("'walk=__prot/0//'")]
    public void Whatever_is_no_walk_is_not_read(string text) => Assert.Equal("null", Ask($"String(W.read(tree, {text}, tools, variants))"));

    [Theory]
    [InlineData("hash + '/0.7.1//'", "[0]", "", "")]
    [InlineData("hash + '/0/constructor/0'", "[0]", "", "gauge")]
    [InlineData("hash + '/0/__proto__/99.1'", "[0]", "", "torch")]
    [InlineData("'walk=000000/0.1//'", "[]", "", "")]
    public void What_does_not_fit_the_tree_is_left_out(string text, string answers, string variant, string missing)
    {
        Assert.Equal(answers, Ask($"JSON.stringify(W.read(tree, {text}, tools, variants).answers)"));
        Assert.Equal(variant, Ask($"W.read(tree, {text}, tools, variants).filter.variant"));
        Assert.Equal(missing, Ask($"W.read(tree, {text}, tools, variants).filter.missing.join()"));
    }

    [Fact]
    public void A_tree_whose_steps_changed_bears_another_mark() =>
        Assert.Equal("true", Ask("(() => { const before = W.mark(tree); tree.steps.press.ways[1].to = 'hose'; return before !== W.mark(tree); })()"));

    static string Ask(string question)
    {
        var engine = new Engine();
        engine.Execute(File.ReadAllText(Repository.PathTo("themes", "workshop", "script", "walk-path.js")));
        engine.Execute(Tree);
        return engine.Evaluate($"String({question})").AsString();
    }
}
