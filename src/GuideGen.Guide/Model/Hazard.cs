using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>
/// Signal words with the meaning they have in ANSI Z535.6: danger will, warning could result in death or serious
/// injury if not avoided; caution could result in minor or moderate injury; notice is not about injury.
/// From gravest to least.
/// </summary>
public enum SignalWord
{
    Danger,
    Warning,
    Caution,
    Notice,
}

/// <summary>What can hurt someone.</summary>
/// <param name="IsGrave">Missing care about it is an error, not a warning.</param>
/// <param name="Triggers">Words in hands-on text that make it necessary to declare the hazard.</param>
/// <param name="Cautions">What to do and not to do, in the order to read them.</param>
/// <param name="MetBy">A Safety section names the hazard if it has one of these words.</param>
/// <param name="HandOver">When the job is for a licensed workshop; null if an owner may do all of it.</param>
public sealed record Hazard(
    Located<string> Name,
    Located<SignalWord> Signal,
    bool IsGrave,
    ImmutableArray<Located<string>> Triggers,
    ImmutableArray<Located<string>> Cautions,
    ImmutableArray<Located<string>> MetBy,
    Located<string>? HandOver);

sealed class HazardShape : RecordShape<Hazard>
{
    readonly Field<Located<string>> name;
    readonly Field<Located<SignalWord>> signal;
    readonly Field<Located<bool>> grave;
    readonly Field<ImmutableArray<Located<string>>> triggers;
    readonly Field<ImmutableArray<Located<string>>> cautions;
    readonly Field<ImmutableArray<Located<string>>> metBy;
    readonly Field<Located<string>?> handOver;

    public HazardShape()
    {
        name = Required("name", Scalars.Text, "What can hurt someone, in a few words.");
        signal = Required("signal", SignalWords.Shape, "danger, warning, caution or notice, with their ANSI Z535.6 meaning.");
        grave = Optional("grave", Scalars.Flag, default, "True if missing care about it must stop the compile.");
        triggers = Optional("triggers", Collections.Texts, [], "Words in hands-on text that make it necessary.");
        cautions = Required("cautions", Collections.ListOf(Scalars.Text, 1), "What to do and not to do.");
        metBy = Required("met-by", Collections.ListOf(Scalars.Text, 1), "The Safety section names it if it has one of these words.");
        handOver = Optional("hand-over", Maybe.Of(Scalars.Text), null, "When the job is for a licensed workshop.");
    }

    protected override Hazard Make(RecordValues v) =>
        new(v.Get(name), v.Get(signal), v.Get(grave).Value, v.Get(triggers), v.Get(cautions), v.Get(metBy), v.Get(handOver));
}

/// <summary>The words for <see cref="SignalWord"/> in files of hazards.</summary>
public static class SignalWords
{
    public static Shape<Located<SignalWord>> Shape { get; } = Scalars.Word(
        ("danger", SignalWord.Danger), ("warning", SignalWord.Warning), ("caution", SignalWord.Caution), ("notice", SignalWord.Notice));

    /// <summary>The word as it stands in front matter, which is also the key of the theme's words.</summary>
    public static string Key(SignalWord word) => word switch
    {
        SignalWord.Danger => "danger",
        SignalWord.Warning => "warning",
        SignalWord.Caution => "caution",
        SignalWord.Notice => "notice",
        _ => throw new ArgumentOutOfRangeException(nameof(word)),
    };
}
