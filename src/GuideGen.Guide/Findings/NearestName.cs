namespace GuideGen.Guide.Findings;

/// <summary>Finds the name that an author most likely meant.</summary>
public static class NearestName
{
    /// <returns>The nearest candidate within a third of the written length (at least two slips), or null.</returns>
    public static string? To(string written, IEnumerable<string> candidates)
    {
        var limit = Math.Max(2, written.Length / 3);
        return candidates
            .Where(c => Math.Abs(c.Length - written.Length) <= limit)
            .Select(c => (Name: c, Slips: Slips(written, c)))
            .Where(c => c.Slips <= limit && c.Slips < c.Name.Length)
            .OrderBy(c => c.Slips)
            .ThenBy(c => c.Name, StringComparer.Ordinal)
            .Select(c => c.Name)
            .FirstOrDefault();
    }

    /// <summary>' Did you mean …?' or nothing, ready to close a hint.</summary>
    public static string Question(string written, IEnumerable<string> candidates) =>
        To(written, candidates) is { } name ? $" Did you mean '{name}'?" : "";

    /// <summary>
    /// Fewest insertions, deletions, changed characters and swaps of neighbours (optimal string alignment;
    /// F. Damerau 1964, A technique for computer detection and correction of spelling errors, CACM 7:171-176).
    /// </summary>
    internal static int Slips(string a, string b)
    {
        var (before, last, now) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                now[j] = Math.Min(change, Math.Min(last[j], now[j - 1]) + 1);
                var isSwap = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                if (isSwap) now[j] = Math.Min(now[j], before[j - 2] + 1);
            }

            (before, last, now) = (last, now, before);
        }

        return last[b.Length];
    }
}
