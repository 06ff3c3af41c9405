using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

/// <summary>
/// The vehicles at one place of the tree: by cause the share that came here, and the effort so far summed over them.
/// </summary>
internal sealed class Crowd(int causes)
{
    public double[] Mass { get; } = new double[causes];

    /// <summary>Share times minutes, so that crowds can be effort up.</summary>
    public double[] Minutes { get; } = new double[causes];

    public double[] Money { get; } = new double[causes];

    /// <summary>The most minutes and the most money of any path to here.</summary>
    public Effort Worst { get; private set; }

    /// <summary>The most steps of any path to here.</summary>
    public int Steps { get; private set; }

    /// <summary>One path to here, for messages.</summary>
    public ImmutableArray<string> Path { get; private set; } = [];

    public Crowd Part(double[] share, string step)
    {
        Crowd part = new(Mass.Length) { Worst = Worst, Steps = Steps + 1, Path = [.. Path, step] };
        for (int c = 0; c < Mass.Length; c++)
        {
            part.Mass[c] = Mass[c] * share[c];
            part.Minutes[c] = Minutes[c] * share[c];
            part.Money[c] = Money[c] * share[c];
        }

        return part;
    }

    /// <param name="other">Who joins.</param>
    /// <param name="effort">What getting here took since.</param>
    public void Add(Crowd other, Effort effort)
    {
        for (int c = 0; c < Mass.Length; c++)
        {
            Mass[c] += other.Mass[c];
            Minutes[c] += other.Minutes[c] + other.Mass[c] * effort.Minutes;
            Money[c] += other.Money[c] + other.Mass[c] * effort.Money;
        }

        Effort worst = other.Worst + effort;
        Worst = new(Math.Max(Worst.Minutes, worst.Minutes), Math.Max(Worst.Money, worst.Money));
        Steps = Math.Max(Steps, other.Steps);
        if (Path.IsEmpty)
            Path = other.Path;
    }
}
