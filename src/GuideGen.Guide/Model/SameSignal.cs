using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>How codes and symptoms from one signal are kept from counting twice.</summary>
public enum SignalCount
{
    /// <summary>Only the one that tells causes apart most.</summary>
    Strongest,

    /// <summary>Each in equal part.</summary>
    Shared,

    /// <summary>By a table of how likely each combination is.</summary>
    Joint,
}

/// <summary>Codes and symptoms that go back to one signal: a low boost pressure sets a code and is felt.</summary>
/// <param name="Joint">
/// With <see cref="SignalCount.Joint"/>, by fault, how likely each combination is: a digit for each code and then each
/// symptom, 1 where it shows and 0 where it does not. A fault that is left out has them independent of each other.
/// </param>
public sealed record SameSignal(
    ImmutableArray<Located<TroubleCode>> Codes,
    ImmutableArray<Located<string>> Symptoms,
    Located<SignalCount> Count,
    ImmutableArray<KeyValuePair<Located<string>, ImmutableArray<KeyValuePair<Located<string>, Located<double>>>>> Joint)
{
    /// <summary>Every combination that a joint table has to have.</summary>
    public IEnumerable<string> Combinations =>
        Enumerable.Range(0, 1 << Size).Select(bits => Convert.ToString(bits, 2).PadLeft(Size, '0'));

    public int Size => Codes.Length + Symptoms.Length;
}

sealed class SameSignalShape : RecordShape<SameSignal>
{
    static readonly Shape<Located<SignalCount>> Counts = Scalars.Word(
        ("strongest", SignalCount.Strongest), ("shared", SignalCount.Shared), ("joint", SignalCount.Joint));

    readonly Field<ImmutableArray<Located<TroubleCode>>> codes;
    readonly Field<ImmutableArray<Located<string>>> symptoms;
    readonly Field<Located<SignalCount>> count;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, ImmutableArray<KeyValuePair<Located<string>, Located<double>>>>>> joint;

    public SameSignalShape()
    {
        codes = Optional("codes", Collections.ListOf(Scalars.Code), [], "Codes that the signal sets.");
        symptoms = Optional("symptoms", Collections.Names(NameKind.Symptom), [], "What is noticed of it.");
        count = Optional("count", Counts, default, "strongest: only the one that tells most counts; shared: each counts in part; joint: by a table.");
        joint = Optional(
            "joint",
            Collections.MapOf(Scalars.Name(NameKind.Fault), Collections.MapOf(Scalars.Text, Scalars.Number(0, 1), 2)),
            [],
            "With count: joint. For a fault, how likely each combination is: a digit for each code and then each symptom, such as \"10\": 0.3.");
    }

    protected override SameSignal Make(RecordValues v) => new(v.Get(codes), v.Get(symptoms), v.Get(count), v.Get(joint));
}
