using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>One of the closed list of things that a standard code can say about its subject.</summary>
/// <param name="Key">Stable, lower case with hyphens, as in the catalogue's source.</param>
/// <param name="Words">In English, behind the colon of a meaning.</param>
/// <param name="CircuitWords">The same behind the word "circuit".</param>
/// <param name="Saw">A sentence for owners: what the control unit saw. It does not name a cause.</param>
/// <param name="Checks">What to check first when no page covers the code, and with what caution.</param>
public sealed record ConditionInfo(string Key, string Words, string CircuitWords, string Saw, FirstChecks Checks)
{
    public ImmutableArray<string> Steps => Checks.Steps;

    public ImmutableArray<string> Cautions => Checks.Cautions;
}
