namespace GuideGen.Diagnosis.Evidence;

/// <summary><see cref="Count"/> of <see cref="Total"/> reports. 0 of 0 is allowed and has neither a share nor an interval.</summary>
public readonly record struct Proportion
{
    public Proportion(int count, int total)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, total);
        Count = count;
        Total = total;
    }

    public int Count { get; }

    public int Total { get; }

    public double? Share => Total == 0 ? null : (double)Count / Total;

    /// <summary>Two-sided interval for the share behind the reports; null when there are none.</summary>
    /// <param name="confidence">Above 0 and below 1, for example 0.95.</param>
    /// <param name="method">Wilson's is the one shown to readers.</param>
    public Interval? Interval(double confidence = 0.95, IntervalMethod method = IntervalMethod.Wilson) =>
        Total == 0 ? null : BinomialIntervals.Of(this, confidence, method);

    public override string ToString() => FormattableString.Invariant($"{Count} of {Total}");
}
