using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>A guide's decision that findings of a rule weigh more or less than the rule book says.</summary>
/// <param name="Files">Which files it holds for; a star stands for anything, slashes included.</param>
/// <param name="Weight">Null: such findings are left out.</param>
public sealed record RuleWeight(Located<string> Rule, Located<string> Files, Located<Severity?> Weight, Located<string> Reason);

sealed class RuleWeightShape : RecordShape<RuleWeight>
{
    readonly Field<Located<string>> rule;
    readonly Field<Located<string>> files;
    readonly Field<Located<Severity?>> weight;
    readonly Field<Located<string>> reason;

    public RuleWeightShape()
    {
        rule = Required("rule", Scalars.Mark, "The rule's name, as the finding shows it.");
        files = Optional("files", Scalars.Mark, new Located<string>("*", default), "The files it holds for, such as content/parts/*; leave it out for all.");
        weight = Required("weigh", Weights, "How much its findings weigh here; off leaves them out.");
        reason = Required("reason", Scalars.Text, "Why they weigh more or less in this guide.");
    }

    static Shape<Located<Severity?>> Weights { get; } = Scalars.Word<Severity?>(
        ("error", Severity.Error), ("warning", Severity.Warning), ("note", Severity.Note), ("off", null));

    protected override RuleWeight Make(RecordValues v) => new(v.Get(rule), v.Get(files), v.Get(weight), v.Get(reason));
}
