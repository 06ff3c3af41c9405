using System.Collections.Frozen;

namespace GuideGen.Codes.Reading;

[Flags]
enum WordKind
{
    None = 0,

    /// <summary>Makes it more likely that the line is about trouble codes.</summary>
    Raises = 1,

    /// <summary>The word "code" itself: what follows it may be a code without its letter.</summary>
    Code = 2,

    /// <summary>Says that a fault is meant, so that a missing zero may be guessed.</summary>
    Fault = 4,

    /// <summary>Says that the line is about parts, tools or trade, where numbers look like codes.</summary>
    Lowers = 8,

    /// <summary>Lowers too, but also stands in the meanings of codes.</summary>
    LowersSoftly = 16,

    Module = 32,

    /// <summary>Belongs to the frame of a report: does not part a status or module from its code.</summary>
    Frame = 64,

    /// <summary>Makes another kind of code of a "code" that follows.</summary>
    OtherCode = 128,

    Negates = 256,

    /// <summary>Lowers only before something that looks like a number.</summary>
    Part = 512,
}

readonly record struct ReadingWord(WordKind Kind, StatusWords Status = StatusWords.None);

static class ReadingWords
{
    const WordKind Report = WordKind.Raises | WordKind.Fault | WordKind.Frame;

    static readonly (string Words, ReadingWord Meaning)[] Rows =
    [
        ("CODE CODES DTC DTCS", new(Report | WordKind.Code)),
        ("FAULT FAULTS ERROR ERRORS TROUBLE MIL CEL", new(Report)),
        ("STORED SAVED", new(Report, StatusWords.Stored)),
        ("PENDING", new(Report, StatusWords.Pending)),
        ("CONFIRMED", new(Report, StatusWords.Confirmed)),
        ("PERMANENT", new(Report, StatusWords.Permanent)),
        ("CURRENT ACTIVE PRESENT", new(WordKind.Frame, StatusWords.Current)),
        ("HISTORY HISTORIC HISTORICAL", new(WordKind.Frame, StatusWords.History)),
        ("INTERMITTENT SPORADIC", new(WordKind.Frame, StatusWords.Intermittent)),
        ("ECM PCM ECU TCM TCU ABS SRS BCM EPS HVAC BMS VCU", new(WordKind.Raises | WordKind.Module)),
        ("7E8 7E9 7EA 7EB 7EC 7ED 7EE 7EF 0X7E8 0X7E9 0X7EA 0X7EB 0X7EC 0X7ED 0X7EE 0X7EF", new(WordKind.Module)),
        ("MODULE MODULES", new(WordKind.Raises | WordKind.Frame)),
        ("CONTROL UNIT AND OR IN THE STATUS LAMP LIGHT ON", new(WordKind.Frame)),
        ("NO NOT NONE NEVER WITHOUT", new(WordKind.Negates)),
        ("BOLT BOLTS SCREW SCREWS CLIP CLIPS BULB BULBS TYRE TYRES TIRE TIRES TORQUE NM PHONE CONNECTOR CONNECTORS PIN PINS PN QTY",
            new(WordKind.Lowers)),
        ("OIL FUSE FUSES RELAY RELAYS", new(WordKind.LowersSoftly)),
        ("PART PARTS", new(WordKind.Part | WordKind.OtherCode)),
        ("PAINT COLOUR COLOR POST ZIP BAR AREA RADIO KEY ENGINE TRIM", new(WordKind.OtherCode)),
    ];

    static readonly FrozenDictionary<string, ReadingWord> Table = Spread();

    static readonly FrozenDictionary<string, ReadingWord>.AlternateLookup<ReadOnlySpan<char>> Lookup =
        Table.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <param name="word">Folded, so in upper case.</param>
    internal static ReadingWord Find(ReadOnlySpan<char> word) => Lookup.TryGetValue(word, out var meaning) ? meaning : default;

    static FrozenDictionary<string, ReadingWord> Spread()
    {
        var table = new Dictionary<string, ReadingWord>();
        foreach (var (words, meaning) in Rows)
        {
            foreach (var word in words.Split(' '))
                table[word] = meaning with { Kind = meaning.Kind | table.GetValueOrDefault(word).Kind };
        }
        return table.ToFrozenDictionary();
    }
}
