namespace GuideGen.Diagnosis.Evidence;

/// <summary>A closed range of values, <paramref name="Low"/> at most <paramref name="High"/>.</summary>
public readonly record struct Interval(double Low, double High)
{
    public double Width => High - Low;

    public bool Contains(double value) => value >= Low && value <= High;
}
