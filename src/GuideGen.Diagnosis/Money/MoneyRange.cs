namespace GuideGen.Diagnosis.Money;

/// <summary>A sum of money between two bounds, in one currency; nothing is converted.</summary>
public readonly record struct MoneyRange(decimal Low, decimal High)
{
    public static MoneyRange Exactly(decimal sum) => new(sum, sum);

    public decimal Middle => (Low + High) / 2;

    public static MoneyRange operator +(MoneyRange a, MoneyRange b) => new(a.Low + b.Low, a.High + b.High);

    /// <param name="factor">0 or more, so that the bounds keep their order.</param>
    /// <param name="range">The range.</param>
    public static MoneyRange operator *(decimal factor, MoneyRange range) =>
        factor >= 0 ? new(factor * range.Low, factor * range.High) : throw new ArgumentOutOfRangeException(nameof(factor));
}
