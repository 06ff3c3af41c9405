namespace GuideGen.Codes.Raw;

/// <summary>What an adapter prints between answers; it neither is an answer nor parts two lines of one.</summary>
static class AdapterNoise
{
    // From memory: what common interface chips print. Folded, so in upper case.
    static readonly string[] Beginnings =
        [">", "?", "SEARCHING", "BUS INIT", "NO DATA", "STOPPED", "OK", "BUFFER FULL", "CAN ERROR", "BUS ERROR", "DATA ERROR", "UNABLE TO CONNECT"];

    internal static bool IsNoise(ReadOnlySpan<char> line)
    {
        line = line.Trim(' ');
        if (line.IsEmpty)
            return true;
        foreach (var beginning in Beginnings)
        {
            if (line.StartsWith(beginning, StringComparison.Ordinal))
                return true;
        }
        return false;
    }

    /// <summary>Where the bytes begin when the answer follows on the same line: after a prompt or "SEARCHING...".</summary>
    internal static int Skip(ReadOnlySpan<char> line)
    {
        var start = line.StartsWith("SEARCHING", StringComparison.Ordinal) ? "SEARCHING".Length : 0;
        while (start < line.Length && (line[start] is ' ' or '>' || (line[start] == '.' && line[0] == 'S')))
            start++;
        return start;
    }
}
