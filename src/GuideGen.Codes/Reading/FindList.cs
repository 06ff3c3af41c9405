using System.Collections.Immutable;

namespace GuideGen.Codes.Reading;

/// <summary>The finds in the order of the text, each code of a control unit once; a repeat adds its status to the first.</summary>
sealed class FindList(string text)
{
    readonly List<CodeFind> finds = [];
    // Most texts name no control unit, so the finds without one are looked up by the code alone.
    readonly Dictionary<(ReportedCode, string), int> seenOfModule = [];
    readonly Dictionary<ReportedCode, int> seen = [];

    internal int Count => finds.Count;

    internal ImmutableArray<CodeFind> ToImmutable() => [.. finds];

    /// <returns>Where the find stands in the list.</returns>
    internal int Add(ReportedCode reported, int start, int end, Certainty certainty, string? module)
    {
        if (module is null ? seen.TryGetValue(reported, out var index) : seenOfModule.TryGetValue((reported, module), out index))
        {
            if (certainty < finds[index].Certainty)
                finds[index] = finds[index] with { Certainty = certainty };
            return index;
        }
        finds.Add(new(reported, start, end - start, text[start..end], certainty, StatusWords.None, module));
        if (module is not null) seenOfModule.Add((reported, module), finds.Count - 1);
        seen.TryAdd(reported, finds.Count - 1);
        return finds.Count - 1;
    }

    internal void AddStatus(int index, StatusWords status)
    {
        if ((finds[index].Status | status) != finds[index].Status)
            finds[index] = finds[index] with { Status = finds[index].Status | status };
    }
}
