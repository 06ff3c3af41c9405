using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

abstract class BranchShape : RecordShape<TreeNode>
{
    protected Field<Located<string>?> WhyField() =>
        Optional("why", Maybe.Of(Scalars.Text), null, "Why this is asked, in a sentence.");

    protected Field<Located<string>?> CannotTellField() =>
        Optional("cannot-tell", Maybe.Of(Scalars.Text), null, "The step for somebody who cannot tell.");

    protected Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> WaysField(string key, string help) =>
        Required(key, Collections.MapOf(Scalars.Text, Scalars.Text, 1), help);
}

sealed class AskShape : BranchShape
{
    readonly Field<Located<string>> question;
    readonly Field<Located<string>?> why;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> answers;
    readonly Field<Located<string>?> cannotTell;

    public AskShape()
    {
        question = Required("ask", Scalars.Text, "A question that can be answered without tools.");
        why = WhyField();
        answers = WaysField("answers", "Each answer and the step it leads to.");
        cannotTell = CannotTellField();
    }

    protected override TreeNode Make(RecordValues v) => new AskNode(v.Get(question), v.Get(why), v.Get(answers), v.Get(cannotTell));
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

    protected override TreeNode Make(RecordValues v) => new DoNode(v.Get(check), v.Get(why), v.Get(outcomes), v.Get(cannotTell));
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

    public AdviceShape()
    {
        advice = Required("advice", Scalars.Text, "What to do where no fault is found.");
        drive = Required("drive", DriveWords.Shape, "May the owner drive on?");
    }

    protected override TreeNode Make(RecordValues v) => new AdviceNode(v.Get(advice), v.Get(drive));
}

sealed class JoinShape : RecordShape<TreeNode>
{
    readonly Field<Located<string>> tree;

    public JoinShape() => tree = Required("join", Scalars.Name(NameKind.Tree), "The tree to go on with.");

    protected override TreeNode Make(RecordValues v) => new JoinNode(v.Get(tree));
}
