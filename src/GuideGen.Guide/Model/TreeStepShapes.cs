using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

abstract class BranchShape : RecordShape<TreeNode>
{
    readonly Field<Located<double>?> minutes;
    readonly Field<Located<double>?> money;
    readonly Field<ImmutableArray<Located<string>>> setup;
    readonly Field<ImmutableArray<Located<string>>> tools;

    protected BranchShape()
    {
        minutes = Optional("minutes", Maybe.Of(Scalars.Number(0, 10_000)), null, "How long this step takes here, in place of the check's minutes.");
        money = Optional("money", Maybe.Of(Scalars.Number(0, 100_000)), null, "What is used up here, in place of the check's money.");
        setup = Optional("setup", Collections.Names(NameKind.Setup), [], "Preparation on top of the check's; each is made once on a path.");
        tools = Optional("tools", Collections.Texts, [], "Tools on top of the check's.");
    }

    protected StepNeeds NeedsOf(RecordValues v) => new(v.Get(minutes), v.Get(money), v.Get(setup), v.Get(tools));

    protected Field<Located<string>?> WhyField() =>
        Optional("why", Maybe.Of(Scalars.Text), null, "Why this is asked, in a sentence.");

    protected Field<Located<string>?> CannotTellField() =>
        Optional("cannot-tell", Maybe.Of(Scalars.Mark), null, "The step for somebody who cannot tell.");

    protected Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> WaysField(string key, string help) =>
        Required(key, Collections.MapOf(Scalars.Text, Scalars.Mark, 1), help);
}

sealed class AskShape : BranchShape
{
    readonly Field<Located<string>> question;
    readonly Field<Located<string>?> why;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> answers;
    readonly Field<Located<string>?> cannotTell;
    readonly Field<Located<bool>> certain;

    public AskShape()
    {
        question = Required("ask", Scalars.Text, "A question that can be answered without tools.");
        why = WhyField();
        answers = WaysField("answers", "Each answer and the step it leads to.");
        cannotTell = CannotTellField();
        certain = Optional("certain", Scalars.Flag, default, "True if everybody can answer, so that no 'cannot-tell' is needed.");
    }

    protected override TreeNode Make(RecordValues v) =>
        new AskNode(v.Get(question), v.Get(why), v.Get(answers), v.Get(cannotTell)) { Needs = NeedsOf(v), IsCertain = v.Get(certain).Value };
}

sealed class DoShape : BranchShape
{
    readonly Field<Located<string>> check;
    readonly Field<Located<string>?> why;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> outcomes;
    readonly Field<Located<string>?> cannotTell;

    public DoShape()
    {
        check = Required("do", Scalars.Name(NameKind.Check), "The check to do.");
        why = WhyField();
        outcomes = WaysField("outcomes", "Each outcome of the check and the step it leads to.");
        cannotTell = CannotTellField();
    }

    protected override TreeNode Make(RecordValues v) =>
        new DoNode(v.Get(check), v.Get(why), v.Get(outcomes), v.Get(cannotTell)) { Needs = NeedsOf(v) };
}

sealed class FaultLeafShape : RecordShape<TreeNode>
{
    readonly Field<Located<string>> fault;

    public FaultLeafShape() => fault = Required("fault", Scalars.Name(NameKind.Fault), "The fault that is found.");

    protected override TreeNode Make(RecordValues v) => new FaultNode(v.Get(fault));
}

sealed class AdviceShape : RecordShape<TreeNode>
{
    readonly Field<Located<string>> advice;
    readonly Field<Located<DriveAdvice>> drive;
    readonly Field<ImmutableArray<Located<string>>> left;

    public AdviceShape()
    {
        advice = Required("advice", Scalars.Text, "What to do where no fault is found.");
        drive = Required("drive", DriveWords.Shape, "May the owner drive on?");
        left = Optional("left", Collections.Names(NameKind.Fault), [], "Faults that may still be the cause, shown below the advice.");
    }

    protected override TreeNode Make(RecordValues v) => new AdviceNode(v.Get(advice), v.Get(drive), v.Get(left));
}

sealed class JoinShape : RecordShape<TreeNode>
{
    readonly Field<Located<string>> tree;

    public JoinShape() => tree = Required("join", Scalars.Name(NameKind.Tree), "The tree to go on with.");

    protected override TreeNode Make(RecordValues v) => new JoinNode(v.Get(tree));
}
