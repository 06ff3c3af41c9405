using System.Collections.Immutable;
using System.Text;

namespace GuideGen.Codes;

/// <summary>The left half of a catalogue line: words with sides in brackets, then sides that follow after ", [".</summary>
static class SubjectLine
{
    public const string Slot = "[]";

    public static (string Subject, ImmutableArray<Side> Sides) Read(string line)
    {
        var sides = ImmutableArray.CreateBuilder<Side>();
        var subject = new StringBuilder(line.Length);
        for (var at = 0; at < line.Length;)
        {
            var open = line.IndexOf('[', at);
            if (open < 0)
                open = line.Length;
            subject.Append(line, at, open - at);
            if (open == line.Length)
                break;
            var close = line.IndexOf(']', open);
            sides.Add(Side.Parse(line[(open + 1)..close]));
            subject.Append(Slot);
            at = close + 1;
        }
        var words = subject.ToString();
        var followers = words.IndexOf(", " + Slot, StringComparison.Ordinal);
        return (followers < 0 ? words : words[..followers], sides.DrainToImmutable());
    }
}
