namespace GuideGen.Codes;

public enum SideKind
{
    Bank,
    Sensor,
    Cylinder,
    Unit,
    Catalyst,

    /// <summary>The standard's letter for one of several like things, or a pair of them: A, B, A/B.</summary>
    Letter,

    /// <summary>A plain number, or two of them: 1, 1/2, "1 to 2" for a gear change.</summary>
    Number,

    /// <summary>Where on the vehicle, in words: left front, driver, second row left.</summary>
    Place,

    /// <summary>When, in which direction or with what consequence: cold start, rich to lean, power limited.</summary>
    Circumstance,
}

/// <summary>One thing that tells like subjects apart.</summary>
/// <param name="Value">Without the word of the kind, so "1" for bank 1.</param>
public sealed record Side(SideKind Kind, string Value)
{
    static readonly (string Word, SideKind Kind)[] Named =
    [
        ("bank ", SideKind.Bank), ("banks ", SideKind.Bank), ("sensor ", SideKind.Sensor), ("cylinder ", SideKind.Cylinder),
        ("unit ", SideKind.Unit), ("catalyst ", SideKind.Catalyst),
    ];

    static readonly string[] Places =
        ["left", "right", "front", "rear", "centre", "driver", "passenger", "first row", "second row", "third row", "single"];

    /// <summary>From a bracket of the catalogue's source, as in "bank 1", "A/B", "left front", "cold start".</summary>
    internal static Side Parse(string written)
    {
        foreach (var (word, kind) in Named)
        {
            // "sensor reads lean" is a circumstance: what names a sensor is a number or one letter.
            if (written.StartsWith(word, StringComparison.Ordinal) && IsMark(written[word.Length..]))
                return new(kind, written[word.Length..]);
        }
        if (char.IsAsciiDigit(written[0]))
            return new(SideKind.Number, written);
        if (char.IsAsciiLetterUpper(written[0]))
            return new(SideKind.Letter, written);
        return new(Array.Exists(Places, p => written.StartsWith(p, StringComparison.Ordinal)) ? SideKind.Place : SideKind.Circumstance, written);
    }

    static bool IsMark(string rest) => char.IsAsciiDigit(rest[0]) || (rest.Length == 1 && char.IsAsciiLetterUpper(rest[0]));
}
