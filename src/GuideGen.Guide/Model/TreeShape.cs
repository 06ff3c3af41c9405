using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Model;

/// <summary>A tree either has its steps written out, or says by 'order: computed' what the tool is to build them from.</summary>
sealed class TreeShape : EntryShape<Tree>
{
    static readonly string[] Written = ["start", "nodes"];
    static readonly string[] ForTheTool = ["checks", "faults", "questions", "without", "ask-variant", "advice", "drive"];
    static readonly string[] ToolNeeds = ["advice", "drive"];

    readonly Field<Located<string>> symptom;
    readonly Field<Located<string>?> order;
    readonly Field<Located<string>?> start;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, TreeNode>>> nodes;
    readonly ComputedFields computed;

    public TreeShape()
    {
        symptom = Required("symptom", Scalars.Name(NameKind.Symptom), "The symptom the walk begins with.");
        order = Optional("order", Maybe.Of(OrderWord), null, "'computed' lets the tool build the steps; leave it out to write them yourself.");
        start = Optional("start", Maybe.Of(Scalars.Mark), null, "The name of the first step.");
        nodes = Optional("nodes", Collections.MapOf(Scalars.Key, new TreeNodeShape(), 1), [], "The steps, by name.");
        computed = new ComputedFields
        {
            Checks = Optional("checks", Collections.Names(NameKind.Check), [], "The checks to choose from; leave it out for all that speak of these faults."),
            Faults = Optional("faults", Collections.Names(NameKind.Fault), [], "The faults to tell apart; leave it out for all that show the symptom."),
            Questions = Optional("questions", Collections.MapOf(Scalars.Key, new TreeQuestionShape()), [], "Questions that tell faults apart without a tool, by name."),
            Without = Optional("without", Collections.Texts, [], "Tools that an owner is not expected to have; checks that need them are left out."),
            AskVariant = Optional("ask-variant", Maybe.Of(Scalars.Text), null, "The question for the variant, asked first; leave it out for one order for all."),
            Advice = Optional("advice", Maybe.Of(Scalars.Text), null, "What to do where nothing is found."),
            Drive = Optional("drive", Maybe.Of(DriveWords.Shape), null, "May the owner drive on where nothing is found?"),
        };
    }

    static Shape<Located<string>> OrderWord { get; } = Scalars.Word(("computed", "computed"));

    protected override string Conditions => """
        [{ "if": { "required": ["order"] },
           "then": { "required": ["advice", "drive"], "properties": { "start": false, "nodes": false } },
           "else": { "required": ["start", "nodes"], "properties": { "checks": false, "faults": false, "questions": false, "without": false, "ask-variant": false, "advice": false, "drive": false } } }]
        """;

    public override bool TryRead(YamlNode node, Binding binding, out Tree value)
    {
        if (node is not YamlMap map) return base.TryRead(node, binding, out value);
        var isComputed = map.Find("order") is not null;
        var misplaced = (isComputed ? Written : ForTheTool).Select(map.Find).OfType<YamlEntry>().ToList();
        var kind = isComputed ? "trees whose steps are written out" : "trees with 'order: computed'";
        binding.Findings.AddRange(misplaced.Select(e => Rules.KeyContext.At(e.Key.Span, e.Key.Value, kind)));
        var missing = (isComputed ? ToolNeeds : Written).Where(key => map.Find(key) is null).ToList();
        binding.Findings.AddRange(missing.Select(key => Rules.KeyMissing.At(map.Span with { Length = 0 }, key, Fields.First(f => f.Key == key).Expected)));
        return base.TryRead(node, binding, out value) && missing.Count == 0 && misplaced.Count == 0 && (isComputed || !value.Nodes.IsEmpty);
    }

    protected override Tree Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(symptom), v.Get(start) ?? v.Get(Name).With(""), v.Get(nodes))
        {
            Variants = v.Get(Variants),
            Dismissals = v.Get(Dismissals),
            Computed = v.Get(order) is { } word ? computed.Make(v, word.Span) : null,
        };
}
