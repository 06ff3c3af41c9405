using System.Text.Json;
using GuideGen.Testing;
using Jint;

namespace GuideGen.Faults.Fuzz;

/// <summary>What the browser's scripts read from strangers: shared links, and pasted reports.</summary>
static class ScriptReaders
{
    static readonly string[] Weighed = ["#w1;v=w20d;c=P0299.P2263;n=P0420;s=reduced-power;r=1;o=pressure-test:leaks;t=smoke-machine;p=cold", "#w1;c=P0299", "#w1;", "#w1;v=constructor;s=tostring;o=valueof:x"];

    static readonly string[] Walked = ["#walk=0abc12/0.1.2/w20d/0.1", "#walk=zzzzzz///", "#walk=000000/0/constructor/0"];

    static readonly string[] Pasted = ["P0299 stored\nU0100-00", "7E8 06 43 02 02 99 22 63", "43 02 99 00 00 00 00", "no P0420, P0299 pending"];

    static readonly string[] Pieces = ["#w1", ";c=", ";v=", ";o=", "P0299", ".", ":", "walk=", "/", "0", "999", "w20d", "hasownproperty", "43 ", "7E8 ", "%3C", "javascript:"];

    const string Tree = "{ start: 'a', steps: { a: { tools: ['lamp'], ways: [{ to: 'b', variants: null, unsure: false }, { to: 'c', variants: ['w20d'], unsure: true }] }, b: { tools: [], ways: [] }, c: { tools: [], ways: [] } } }";

    // What is read, written and read again is the same: nothing that a link brings grows or changes on its way.
    const string WeighHolds = "(t => { const W = GuideGen.weighAddress, s = W.read(t), w = W.write(s); return W.write(W.read(w)) === w && !/[<>\"'&\\s]/.test(w) && Object.getPrototypeOf(s.findings) === Object.prototype; })";

    const string WalkHolds = "(t => { const P = GuideGen.walkPath, tree = " + Tree + ", s = P.read(tree, t, ['lamp'], ['w20d']); return s === null || (s.filter.missing.every(m => m === 'lamp') && ['', 'w20d'].includes(s.filter.variant) && 'abc'.includes(P.follow(tree, s.answers, s.filter).at)); })";

    const string ReportHolds = "(t => GuideGen.codes.read(t, 'freeText').every(f => f.start >= 0 && f.length > 0 && f.start + f.length <= t.length))";

    public static IEnumerable<FuzzTarget> All()
    {
        yield return Of("weighing links, in the browser's script", 200_000, Weighed, WeighHolds, 7, "weigh-address.js");
        yield return Of("walk links, in the browser's script", 200_000, Walked, WalkHolds, 8, "walk-path.js");
        yield return Of("pasted reports, in the browser's script", 30_000, Pasted, ReportHolds, 9, "codes.js", "codes-line.js", "codes-trail.js", "codes-raw.js", "codes-read.js");
    }

    static FuzzTarget Of(string name, int usual, string[] seeds, string holds, int seed, params string[] scripts)
    {
        var engine = new Engine();
        engine.Execute("globalThis.self = globalThis; globalThis.GuideGen = {};");
        foreach (var script in scripts) engine.Execute(Repository.Read("themes", "workshop", "script", script));
        engine.Execute("globalThis.holds = " + holds);
        return new(name, usual, new(seed, seeds, Pieces), text => engine.Evaluate($"holds({JsonSerializer.Serialize(text)})").AsBoolean());
    }
}
