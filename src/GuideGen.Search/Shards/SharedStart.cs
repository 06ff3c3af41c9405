using System.Text;

namespace GuideGen.Search.Shards;

/// <summary>A word written against another one that begins alike: one digit of <see cref="NumberText"/>, then what differs.</summary>
static class SharedStart
{
    const int Most = 44;

    /// <summary>The digit says how many characters of <paramref name="before"/> the word goes on from.</summary>
    public static string Shorten(string word, string before)
    {
        var shared = Length(word, before);
        return new StringBuilder().AppendNumber(shared).Append(word, shared, word.Length - shared).ToString();
    }

    /// <summary>The digit says how many characters of <paramref name="stem"/>'s end fall off; empty when nothing changes.</summary>
    public static string Change(string word, string stem)
    {
        if (word == stem) return "";
        var shared = Length(word, stem);
        // A stem differs from its word near its end; only a very long one falls short of that, and is shown as it is.
        return stem.Length - shared > Most
            ? ""
            : new StringBuilder().AppendNumber(stem.Length - shared).Append(word, shared, word.Length - shared).ToString();
    }

    static int Length(string word, string other)
    {
        var shared = Math.Min(word.AsSpan().CommonPrefixLength(other), Most);
        // Never between the halves of a surrogate pair: neither half alone can be written to a file.
        return shared > 0 && char.IsHighSurrogate(word[shared - 1]) ? shared - 1 : shared;
    }
}
