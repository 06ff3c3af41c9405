using System.Collections.Immutable;

namespace GuideGen.Codes.Reading;

/// <summary>Says which codes may have been meant by what was typed into the look-up box.</summary>
public static class CodeSuggester
{
    // How far each slip is from what was typed; by experience which slips are common, no source.
    static readonly Dictionary<Slip, int> Costs = new()
    {
        [Slip.None] = 0,
        [Slip.LookAlike] = 1,
        [Slip.Doubled] = 2,
        [Slip.DroppedZero] = 3,
        [Slip.MissingLetter] = 3,
        [Slip.Swapped] = 3,
        [Slip.StrangeLetter] = 3,
        [Slip.WrongLetter] = 5,
        [Slip.ExtraCharacter] = 5,
        [Slip.DroppedCharacter] = 6,
        [Slip.WrongDigit] = 7,
    };

    // The standard's codes are listed, so one that is not is likelier a slip than meant; a maker's are not listed.
    const int CostOfUnlisted = 8;
    const int CostOfUnknownMakers = 4;

    const string LookAlikes = "OQILZSGB";
    const string TheirDigits = "00112568";

    /// <summary>
    /// The best first: the nearest slip, then what the guide covers, then what its cases have more often. What was typed
    /// is itself among them when it is a code; otherwise only codes that <paramref name="standing"/> knows.
    /// </summary>
    public static ImmutableArray<CodeSuggestion> Suggest(string typed, Func<TroubleCode, CodeStanding> standing, int limit = 5)
    {
        var best = new Dictionary<TroubleCode, (Slip Slip, CodeStanding Standing, int Cost)>();
        foreach (var (slip, text) in SlipCandidates.Of(Core(Folding.Fold(typed))))
        {
            if (ReadCandidate(text, slip) is not var (code, read) || (best.TryGetValue(code, out var known) && known.Cost <= Costs[read]))
                continue;
            var stands = standing(code);
            var cost = Costs[read] + CostOfNotKnowing(code, stands);
            if (stands.IsKnown || read is Slip.None or Slip.LookAlike)
                best[code] = (read, stands, cost);
        }
        var ranked = best.OrderBy(b => b.Value.Cost)
            .ThenByDescending(b => b.Value.Standing.IsCovered)
            .ThenByDescending(b => b.Value.Standing.Cases)
            .ThenBy(b => SlipCandidates.Letters.IndexOf(b.Key.Letter, StringComparison.Ordinal))
            .ThenBy(b => b.Key)
            .Select(b => new CodeSuggestion(b.Key, b.Value.Slip, b.Value.Standing))
            .ToList();
        // What was typed keeps a place, however far down it ranks.
        var itself = ranked.FindIndex(s => s.Slip == Slip.None);
        return [.. itself < limit ? ranked.Take(limit) : ranked.Take(limit - 1).Append(ranked[itself])];
    }

    static int CostOfNotKnowing(TroubleCode code, CodeStanding stands) =>
        stands.IsKnown ? 0 : code.Owner == CodeOwner.IsoSae ? CostOfUnlisted : CostOfUnknownMakers;

    // Look-alikes are put right on the way, so that "PO99" is a dropped zero and nothing worse.
    static (TroubleCode, Slip)? ReadCandidate(string text, Slip slip)
    {
        if (TroubleCode.TryParse(text, out var code))
            return (code, slip);
        Span<char> mended = stackalloc char[TroubleCode.Length];
        for (var i = 0; i < mended.Length; i++)
            mended[i] = i == 0 ? text[i] : Mend(text[i], i);
        return TroubleCode.TryParse(mended, out code) ? (code, slip == Slip.None ? Slip.LookAlike : slip) : null;
    }

    static char Mend(char c, int place)
    {
        var at = LookAlikes.IndexOf(c, StringComparison.Ordinal);
        return at < 0 || (place > 1 && char.IsAsciiHexDigit(c)) ? c : TheirDigits[at];
    }

    // The letters and digits, without a failure type and status behind them.
    static string Core(string folded)
    {
        var head = WithoutSuffix(WithoutSuffix(folded.Trim()));
        var core = string.Concat(head.Where(char.IsLetterOrDigit).Take(10));
        return core.Length is 7 or 9 && CodeShape.IsHex(core.AsSpan(5)) ? core[..5] : core;
    }

    static string WithoutSuffix(string text)
    {
        const int suffix = 3;
        var isSuffix = text.Length > suffix && text[^suffix] is '-' or ':' && CodeShape.IsHex(text.AsSpan(text.Length - 2));
        var head = isSuffix ? text[..^suffix] : text;
        return head.Count(char.IsLetterOrDigit) >= TroubleCode.Length - 1 ? head : text;
    }
}
