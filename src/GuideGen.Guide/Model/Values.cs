using System.Collections.Frozen;
using System.Globalization;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>How likely something is, from 0 to 1, with the word the author chose if it was a word.</summary>
public readonly record struct Likelihood(double Value, string? Word)
{
    /// <summary>The one table from words to numbers. The numbers are this project's choice: common practice, no source.</summary>
    public static FrozenDictionary<string, double> Words { get; } = new Dictionary<string, double>
    {
        ["always"] = 0.95,
        ["usually"] = 0.75,
        ["sometimes"] = 0.35,
        ["rarely"] = 0.08,
    }.ToFrozenDictionary();

    public static bool TryParse(string text, out Likelihood likelihood)
    {
        var isWord = Words.TryGetValue(text, out var value);
        var isRead = isWord || (Scalars.TryNumber(text, out value) && value is >= 0 and <= 1);
        likelihood = new Likelihood(value, isWord ? text : null);
        return isRead;
    }

    /// <summary>The author's word, or the word whose number lies nearest.</summary>
    public string InWords()
    {
        var value = Value;
        return Word ?? Words.OrderBy(w => Math.Abs(w.Value - value)).ThenBy(w => w.Key, StringComparer.Ordinal).First().Key;
    }
}

/// <summary>An amount of money in the guide's currency, from low to high (equal for a single price).</summary>
public readonly record struct MoneyRange(decimal Low, decimal High)
{
    public static bool TryParse(string text, out MoneyRange range)
    {
        var parts = text.Split('-', StringSplitOptions.TrimEntries);
        range = default;
        if (parts.Length > 2 || !TryAmount(parts[0], out var low) || !TryAmount(parts[^1], out var high)) return false;
        range = new MoneyRange(low, high);
        return low <= high;
    }

    public static MoneyRange operator +(MoneyRange a, MoneyRange b) => new(a.Low + b.Low, a.High + b.High);

    public static MoneyRange operator *(MoneyRange range, int count) => new(range.Low * count, range.High * count);

    static bool TryAmount(string text, out decimal amount) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out amount) && amount < 1_000_000;
}

/// <summary>Model years, both included.</summary>
public readonly record struct YearRange(int First, int Last)
{
    public static bool TryParse(string text, out YearRange years)
    {
        var parts = text.Split('-', StringSplitOptions.TrimEntries);
        years = default;
        if (parts.Length > 2 || !TryYear(parts[0], out var first) || !TryYear(parts[^1], out var last)) return false;
        years = new YearRange(first, last);
        return first <= last;
    }

    public override string ToString() => First == Last ? $"{First}" : $"{First} to {Last}";

    static bool TryYear(string text, out int year) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out year) && year is >= 1900 and <= 2100;
}

/// <summary>May the owner drive on? From worst to best.</summary>
public enum DriveAdvice
{
    StopNow,
    ToSafety,
    Gently,
    NoHurry,
}

/// <summary>A row of limits: at x the reading lies between low and high.</summary>
public sealed record LimitRow(double X, double Low, double High, SourceSpan Span);
