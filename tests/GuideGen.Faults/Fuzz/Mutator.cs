using System.Text;

namespace GuideGen.Faults.Fuzz;

/// <summary>Makes texts out of seeds: cut, doubled, joined, and with pieces put in that mean something to what reads them.</summary>
sealed class Mutator(int seed, string[] seeds, string[] pieces)
{
    static readonly string[] Anywhere =
    [
        "", " ", "\n", "\r", "\t", "\0", "-", ":", ": ", "- ", "/", "\\", ".", "=", ";", "#", "'", "\"", "[", "]", "{", "}", "<", ">", "|", "*", "_", "`", "&a ", "*a", "!t ", "%", "@", "~",
        "\u2028", "\uFEFF", "\u202E", "\u0301", "\uD83D\uDE90", "\uD800", "é", "ı", "İ", "ﬁ", "０", "Р", "0", "9", "1e9", "-1", "99999999999", "null", "true", "__proto__", "constructor", "</script>",
    ];

    readonly Random chance = new(seed);

    /// <returns>Of at most a few hundred characters more than the longest seed.</returns>
    public string Next()
    {
        var text = new StringBuilder(Pick(seeds));
        for (var i = chance.Next(1, 5); i > 0; i--) Change(text);
        return text.ToString();
    }

    void Change(StringBuilder text)
    {
        var at = chance.Next(text.Length + 1);
        var length = Math.Min(chance.Next(1, 12), text.Length - at);
        switch (chance.Next(6))
        {
            case 0:
                text.Remove(at, length);
                break;
            case 1:
                text.Insert(at, text.ToString(at, length));
                break;
            case 2:
                text.Insert(at, Pick(seeds) is var other && other.Length > 60 ? other[..chance.Next(60)] : Pick(pieces));
                break;
            case 3 when text.Length > 0:
                text[Math.Min(at, text.Length - 1)] = (char)chance.Next(32, 127);
                break;
            default:
                text.Insert(at, Pick(chance.Next(2) == 0 ? pieces : Anywhere));
                break;
        }
    }

    string Pick(string[] from) => from[chance.Next(from.Length)];
}
