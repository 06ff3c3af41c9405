using System.Collections.Immutable;
using GuideGen.Search.Lunr;

namespace GuideGen.Search.Tests;

/// <summary>Documents with everything that cutting, trimming and stemming could trip over. Invented; the same on every run.</summary>
static class SampleTexts
{
    static readonly string[] Odd =
    [
        "", " ", "-", "--- -- -", "&", "a & b", "the of and", "THE The tHe", "…", "° C °C -40°C 20%", "it's isn't o'clock 'tis twas",
        "constructor toString __proto__ hasOwnProperty valueOf _index length prototype", "_underscore_ __", "tab\there\vand\fform\r\nfeed",
        "no\u00A0break thin\u2009space zero\u200Bwidth bom\uFEFFmark line\u2028sep ogham\u1680x wide\u3000space nel\u0085x",
        "café élan naïve Ünal œuvre straße ÉLÈVE", "İstanbul DİESEL ıspark", "ΟΔΟΣ ΣΑΣ Σ ΑΣ'Α ΑΣ. ΑΣ́ β ΑΣΒ", "масло фильтр двигатель", "油 オイル フィルター",
        "emoji 🔧 x🔧y 🔧🔧 a🔧", "half \uD83D pair \uDD27 x\uD83Dy", "quote \"in\" back\\slash c:\\temp\\x a\"b\"c", "ctrl a\u0001b c\u001Fd e\u007Ff g\bh",
        "P0420 p0420 P0420-11 U0100 B1234-1A C0035 p 0420 P04 20 p0a7f p0a80", "0 00 1 01 12 120 1.5 1,5 1/2 10e3 0x1F 3.14159 v2.3.9 +5V -12V",
        "well-known in-line e-mail co-operate re‐use en–dash em—dash", "ABS ESP EGR DPF SCR NOx BluFluid CAN-bus OBD-II", "a.b.c x/y/z user@example key:value",
        "is isis ies sses eed ed ing s es as ss sky by say cry yes y yy yyy yay yeah yearly yelling yield", "ll ell all fall falling controll rolled enroll",
        "agreed feed fed plastered bled motoring sing conflated troubled sized hopping tanned falling hissing fizzed failing filing",
        "relational conditional rational valenci hesitanci digitizer conformabli radicalli differentli vileli analogousli vietnamization predication operator feudalism decisiveness hopefulness callousness formaliti sensitiviti sensibiliti analogi",
        "triplicate formative formalize electriciti electrical hopeful goodness", "revival allowance inference airliner gyroscopic adjustable defensible irritant replacement adjustment dependent adoption homologou communism activate angulariti homologous effective bowdlerize",
        "probate rate cease controll roll", "x1y ay by cy1 1y 1ed 1ing 9s 99es aed eing oing", "aaaaaaaa eeee bbbb tttt zzzz", "brake brakes braked braking brake's BRAKE. (brake) [brake] brake,brake",
    ];

    static readonly string[] Stems = ["brak", "coolant", "glow", "inject", "turbo", "valv", "senso", "wiring", "leak", "smok", "idl", "batter", "alternat", "clutch", "gear", "steer", "rattl", "vibrat", "ignit", "therm"];
    static readonly string[] Tails = ["", "s", "e", "ed", "ing", "er", "ers", "or", "ation", "ational", "ly", "y", "ies", "ness", "fulness", "ment", "able", "ibility", "ive", "ization", "ism", "ous", "'s", ".", ",", "-up"];
    static readonly string[] Joins = [" ", " ", " ", " ", " ", "-", " - ", "  ", "\n", ", ", "/", " the ", " of a ", " "];

    public static ImmutableArray<SearchField> Fields { get; } = SearchDocument.Fields;

    public static ImmutableArray<LunrDocument> Documents(int count)
    {
        var random = new Random(20261125);
        return [.. Enumerable.Range(0, count).Select(i => Document(i, random))];
    }

    static LunrDocument Document(int number, Random random)
    {
        var odd = Odd[number % Odd.Length];
        var reference = (number % 7) switch
        {
            0 => $"{number}",
            1 => $"faults/{number}/\"quoted\" & ünïcode.html",
            2 => $"0{number}",
            _ => $"faults/page-{number}.html",
        };
        return new(reference, [Text(random, random.Next(5)), Codes(random), number % 3 == 0 ? odd : Text(random, random.Next(20)), odd + " " + Text(random, random.Next(120))]);
    }

    static string Codes(Random random) => string.Join(' ', Enumerable.Range(0, random.Next(3)).Select(_ => $"{"PBCU"[random.Next(4)]}{random.Next(4)}{random.Next(16):X}{random.Next(40):D2}"));

    static string Text(Random random, int words) =>
        string.Concat(Enumerable.Range(0, words).Select(_ => Word(random) + Joins[random.Next(Joins.Length)]));

    static string Word(Random random) => random.Next(12) switch
    {
        0 => $"{random.Next(2000)}",
        1 => Odd[random.Next(Odd.Length)],
        2 => (Stems[random.Next(Stems.Length)] + Tails[random.Next(Tails.Length)]).ToUpperInvariant(),
        3 => string.Concat(Enumerable.Range(0, 1 + random.Next(8)).Select(_ => "aeiouybcdlstz"[random.Next(13)])),
        _ => Stems[random.Next(Stems.Length)] + Tails[random.Next(Tails.Length)],
    };

    /// <summary>Random short words over letters that the stemmer's rules look at, and the words of the odd texts.</summary>
    public static IEnumerable<string> Words(int count)
    {
        var random = new Random(1980);
        return Enumerable.Range(0, count).Select(i => Pick(i, random)).Concat(Odd.SelectMany(o => o.ToLowerInvariant().Split((char[]?)null)));
    }

    static string Pick(int number, Random random)
    {
        var start = string.Concat(Enumerable.Range(0, random.Next(6)).Select(_ => "aeiouybcdlstxw1é"[random.Next(16)]));
        var tail = Tails[random.Next(Tails.Length)];
        return number % 2 == 0 ? start + tail + Tails[random.Next(Tails.Length)] : Stems[random.Next(Stems.Length)] + start + tail;
    }
}
