using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>One thing to look at or measure.</summary>
/// <param name="Minutes">How long it takes an owner, without set-up.</param>
/// <param name="Money">What is used up, in the guide's currency.</param>
/// <param name="Setup">Preparation shared with other checks, counted once per path.</param>
/// <param name="Outcomes">What may be seen, by name.</param>
public sealed record Check(
    PageOrigin Origin,
    Located<string> Name,
    Located<string> Summary,
    Located<double> Minutes,
    Located<double>? Money,
    ImmutableArray<Located<string>> Setup,
    ImmutableArray<Located<string>> Tools,
    ImmutableArray<Located<string>> Parts,
    ImmutableArray<KeyValuePair<Located<string>, Outcome>> Outcomes,
    ImmutableArray<Reading> Readings) : IHandsOnPage
{
    public ImmutableArray<Located<string>> Variants { get; init; } = [];

    public ImmutableArray<Located<string>> Hazards { get; init; } = [];

    public ImmutableArray<Dismissal> Dismissals { get; init; } = [];

    public required Provenance Provenance { get; init; }
}

/// <summary>One way a check can end, and what that means.</summary>
/// <param name="Chance">How likely this outcome is if a fault is the cause.</param>
public sealed record Outcome(
    Located<string> Name,
    ImmutableArray<Located<string>> PointsTo,
    ImmutableArray<Located<string>> RulesOut,
    ImmutableArray<KeyValuePair<Located<string>, Located<Likelihood>>> Chance);

sealed class CheckShape : HandsOnShape<Check>
{
    readonly Field<Located<double>> minutes;
    readonly Field<Located<double>?> money;
    readonly Field<ImmutableArray<Located<string>>> setup;
    readonly Field<ImmutableArray<Located<string>>> tools;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Outcome>>> outcomes;
    readonly Field<ImmutableArray<Reading>> readings;

    public CheckShape()
    {
        minutes = Required("minutes", Scalars.Number(0, 10_000), "How long it takes you, without shared preparation.");
        money = Optional("money", Maybe.Of(Scalars.Number(0, 100_000)), null, "What is used up by doing it.");
        setup = Optional("setup", Collections.Names(NameKind.Setup), [], "Preparation it shares with other checks.");
        tools = ToolsField();
        outcomes = Required("outcomes", Collections.MapOf(Scalars.Key, new OutcomeShape(), 2), "What may be seen, and what that means.");
        readings = Optional("readings", Collections.ListOf(new ReadingShape()), [], "Values to measure, with their limits.");
    }

    protected override Check Make(RecordValues v) =>
        new(v.Origin, v.Get(Name), v.Get(Summary), v.Get(minutes), v.Get(money), v.Get(setup), v.Get(tools), v.Get(Parts), v.Get(outcomes), v.Get(readings))
        {
            Variants = v.Get(Variants),
            Hazards = v.Get(Hazards),
            Dismissals = v.Get(Dismissals),
            Provenance = ProvenanceOf(v),
        };
}

sealed class OutcomeShape : RecordShape<Outcome>
{
    readonly Field<Located<string>> name;
    readonly Field<ImmutableArray<Located<string>>> pointsTo;
    readonly Field<ImmutableArray<Located<string>>> rulesOut;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<Likelihood>>>> chance;

    public OutcomeShape()
    {
        name = Required("name", Scalars.Text, "What is seen, in words.");
        pointsTo = Optional("points-to", Collections.Names(NameKind.Fault), [], "Faults this speaks for.");
        rulesOut = Optional("rules-out", Collections.Names(NameKind.Fault), [], "Faults this clears.");
        chance = Optional("chance", Collections.MapOf(Scalars.Name(NameKind.Fault), Scalars.Likelihood), [], "How likely this outcome is, given a fault.");
    }

    protected override Outcome Make(RecordValues v) => new(v.Get(name), v.Get(pointsTo), v.Get(rulesOut), v.Get(chance));
}
