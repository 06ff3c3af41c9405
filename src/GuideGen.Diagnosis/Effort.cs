using System.Collections.Immutable;

namespace GuideGen.Diagnosis;

/// <summary>What a step takes. Money in the guide's currency.</summary>
public readonly record struct Effort(double Minutes, double Money = 0)
{
    public static Effort None => default;

    public static Effort operator +(Effort a, Effort b) => new(a.Minutes + b.Minutes, a.Money + b.Money);

    public static Effort operator *(double factor, Effort a) => new(factor * a.Minutes, factor * a.Money);
}

/// <summary>A preparation that several checks share, such as taking the undertray off; it is done once on a path.</summary>
public sealed record Setup(string Id, Effort Effort);

/// <summary>How minutes and money become one cost that can be made small.</summary>
/// <param name="PerMinute">What a minute counts.</param>
/// <param name="PerMoney">What a unit of currency counts; with 0 only time is saved.</param>
public readonly record struct CostScale(double PerMinute, double PerMoney)
{
    public static CostScale MinutesOnly { get; } = new(1, 0);

    public double Of(Effort effort) => PerMinute * effort.Minutes + PerMoney * effort.Money;
}

/// <summary>A cause and how probable it is.</summary>
public sealed record WeightedCause(string Id, double Probability)
{
    /// <summary>The cause 'none that the guide knows'; without it a list would always claim to be complete.</summary>
    public const string SomethingElse = "something-else";
}

/// <summary>A check, as far as it can be left out for want of a tool.</summary>
public interface IToolUser
{
    ImmutableArray<string> Tools { get; }
}

public static class ToolsAtHand
{
    /// <summary>The checks that can be done without the <paramref name="missing"/> tools ('I have no pressure gauge').</summary>
    public static ImmutableArray<T> Without<T>(this IEnumerable<T> checks, IReadOnlySet<string> missing)
        where T : IToolUser =>
        [.. checks.Where(c => !c.Tools.Any(missing.Contains))];
}
