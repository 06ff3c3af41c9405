using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What the tool builds the steps of a tree from.</summary>
/// <param name="Place">Where the author asked for it: built steps have no other place.</param>
/// <param name="Checks">The checks to choose from; empty for all that speak of the faults.</param>
/// <param name="Faults">The faults to tell apart; empty for all that show the tree's symptom.</param>
/// <param name="Questions">What can be asked, by name.</param>
/// <param name="Without">Tools that are not at hand.</param>
/// <param name="AskVariant">The first question, whose answers are the variants; null for one order for all of them.</param>
/// <param name="Advice">What to do where nothing is found.</param>
/// <param name="Drive">Whether one may drive then.</param>
public sealed record ComputedOrder(
    SourceSpan Place,
    ImmutableArray<Located<string>> Checks,
    ImmutableArray<Located<string>> Faults,
    ImmutableArray<KeyValuePair<Located<string>, TreeQuestion>> Questions,
    ImmutableArray<Located<string>> Without,
    Located<string>? AskVariant,
    Located<string> Advice,
    Located<DriveAdvice> Drive)
{
    /// <summary>How the order was found, for the page; null before it is.</summary>
    public string? Method { get; init; }
}

/// <summary>A question with what its answers mean, as a check has outcomes.</summary>
public sealed record TreeQuestion(
    Located<string> Question,
    Located<string>? Why,
    Located<double>? Minutes,
    ImmutableArray<KeyValuePair<Located<string>, Outcome>> Answers);

sealed class ComputedFields
{
    public required Field<ImmutableArray<Located<string>>> Checks { get; init; }

    public required Field<ImmutableArray<Located<string>>> Faults { get; init; }

    public required Field<ImmutableArray<KeyValuePair<Located<string>, TreeQuestion>>> Questions { get; init; }

    public required Field<ImmutableArray<Located<string>>> Without { get; init; }

    public required Field<Located<string>?> AskVariant { get; init; }

    public required Field<Located<string>?> Advice { get; init; }

    public required Field<Located<DriveAdvice>?> Drive { get; init; }

    public ComputedOrder Make(RecordValues v, SourceSpan place) => new(
        place,
        v.Get(Checks),
        v.Get(Faults),
        v.Get(Questions),
        v.Get(Without),
        v.Get(AskVariant),
        v.Get(Advice) ?? new Located<string>("", place),
        v.Get(Drive) ?? new Located<DriveAdvice>(DriveAdvice.StopNow, place));
}

sealed class TreeQuestionShape : RecordShape<TreeQuestion>
{
    readonly Field<Located<string>> question;
    readonly Field<Located<string>?> why;
    readonly Field<Located<double>?> minutes;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Outcome>>> answers;

    public TreeQuestionShape()
    {
        question = Required("ask", Scalars.Text, "A question that can be answered without tools.");
        why = Optional("why", Maybe.Of(Scalars.Text), null, "Why this is asked, in a sentence.");
        minutes = Optional("minutes", Maybe.Of(Scalars.Number(0, 10_000)), null, "How long it takes to answer.");
        answers = Required("answers", Collections.MapOf(Scalars.Key, new OutcomeShape(), 2), "The answers, and what each means.");
    }

    protected override TreeQuestion Make(RecordValues v) => new(v.Get(question), v.Get(why), v.Get(minutes), v.Get(answers));
}
