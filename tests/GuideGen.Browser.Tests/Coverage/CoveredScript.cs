using System.Globalization;
using System.Text.RegularExpressions;

namespace GuideGen.Browser.Tests.Coverage;

/// <summary>One script of the theme, and which of its characters ran. Blanks and comments are no code.</summary>
sealed partial class CoveredScript
{
    readonly string name;
    readonly string text;
    readonly bool[] isCode;
    readonly bool[] ran;

    public CoveredScript(string name, string text)
    {
        (this.name, this.text) = (name, text);
        ran = new bool[text.Length];
        isCode = [.. text.Select(c => !char.IsWhiteSpace(c))];
        foreach (Match comment in Comments().Matches(text)) Array.Fill(isCode, false, comment.Index, comment.Length);
    }

    public int Code => isCode.Count(c => c);

    public int Ran => isCode.Zip(ran).Count(c => c is (true, true));

    public string Row => string.Create(CultureInfo.InvariantCulture, $"| {name} | {Code} | {100.0 * Ran / Code:F1} | {string.Join(", ", Missed())} |");

    /// <param name="ranges">Of one visit. An inner range says more than the one around it.</param>
    public void Add(IEnumerable<CoveredRange> ranges)
    {
        var now = new bool[text.Length];
        foreach (var range in ranges.OrderBy(r => r.Start).ThenByDescending(r => r.End)) Array.Fill(now, range.Ran, range.Start, Math.Min(range.End, text.Length) - range.Start);
        lock (ran)
        {
            for (var i = 0; i < now.Length; i++) ran[i] |= now[i];
        }
    }

    IEnumerable<int> Missed() => Enumerable.Range(0, text.Length).Where(i => isCode[i] && !ran[i]).Select(LineOf).Distinct();

    int LineOf(int index) => 1 + text.AsSpan(0, index).Count('\n');

    [GeneratedRegex(@"^\s*//[^\n]*|/\*\*?[\s\S]*?\*/", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Comments();
}
