using System.Collections.Immutable;

namespace GuideGen.Codes.Reading;

/// <summary>The finds in the order of the text, each code of a control unit once; a repeat adds its status to the first.</summary>
sealed class FindList(string text)
{
    readonly List<CodeFind> finds = [];
    readonly Dictionary<(ReportedCode, string?), int> seen = [];
    readonly Dictionary<ReportedCode, int> seenAnywhere = [];

    internal int Count => finds.Count;

    internal ImmutableArray<CodeFind> ToImmutable() => [.. finds];

    /// <returns>Where the find stands in the list.</returns>
    internal int Add(ReportedCode reported, int start, int end, Certainty certainty, string? module)
    {
        if (seen.TryGetValue((reported, module), out var index) || (module is null && seenAnywhere.TryGetValue(reported, out index)))
        {
            if (certainty < finds[index].Certainty)
                finds[index] = finds[index] with { Certainty = certainty };
            return index;
        }
        finds.Add(new(reported, start, end - start, text[start..end], certainty, StatusWords.None, module));
        seen.Add((reported, module), finds.Count - 1);
        seenAnywhere.TryAdd(reported, finds.Count - 1);
        return finds.Count - 1;
    }

    internal void AddStatus(int index, StatusWords status)
    {
        if ((finds[index].Status | status) != finds[index].Status)
            finds[index] = finds[index] with { Status = finds[index].Status | status };
    }
}
