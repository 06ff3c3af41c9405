namespace GuideGen.Guide.Tests.Rows;

/// <summary>A change of a file in a few lines: what begins with a hyphen is replaced by what begins with a plus below it.</summary>
static class Edit
{
    public static string Apply(string text, string edit)
    {
        var lines = text.Split('\n').ToList();
        var hunks = edit.TrimEnd('\n').Split('\n');
        for (var i = 0; i < hunks.Length;)
        {
            var old = Take(hunks, ref i, '-');
            var added = Take(hunks, ref i, '+');
            var at = Find(lines, old);
            lines.RemoveRange(at, old.Count);
            lines.InsertRange(at, added);
        }

        return string.Join('\n', lines);
    }

    static List<string> Take(string[] hunks, ref int i, char sign)
    {
        var taken = new List<string>();
        for (; i < hunks.Length && hunks[i].StartsWith(sign); i++) taken.Add(hunks[i].Length > 2 ? hunks[i][2..] : "");
        return taken;
    }

    static int Find(List<string> lines, List<string> old)
    {
        var places = Enumerable.Range(0, lines.Count).Where(i => lines.Skip(i).Take(old.Count).SequenceEqual(old)).ToList();
        Assert.True(old.Count > 0 && places.Count == 1, $"the lines of an edit stand {places.Count} times in the file: {string.Join(" / ", old)}");
        return places[0];
    }
}
