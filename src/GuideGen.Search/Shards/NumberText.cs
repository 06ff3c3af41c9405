using System.Text;

namespace GuideGen.Search.Shards;

/// <summary>
/// Whole numbers from 0 on as short printable text that a script string holds without escapes. Each character is a digit to
/// base 45, the highest first; a digit that another follows is written 45 higher. The characters are those from # to ~
/// without the backslash, so quotes and spaces stay free to separate numbers' lists. search.js reads this.
/// </summary>
static class NumberText
{
    const int Base = 45;

    public static StringBuilder AppendNumber(this StringBuilder text, int value)
    {
        if (value >= Base) AppendHigher(text, value / Base);
        return text.Append(Character(value % Base));
    }

    static void AppendHigher(StringBuilder text, int value)
    {
        if (value >= Base) AppendHigher(text, value / Base);
        text.Append(Character(value % Base + Base));
    }

    static char Character(int digit)
    {
        var c = (char)('#' + digit);
        return c < '\\' ? c : (char)(c + 1);
    }
}
