namespace GuideGen.Site.Asking;

/// <summary>What was asked for while one file was made, each item once, in the order it was asked for first.</summary>
public sealed class AskedItems
{
    /// <summary>Between two names.</summary>
    public const char Separator = ',';

    readonly HashSet<string> seen = new(StringComparer.Ordinal);
    readonly List<string> items = [];

    internal void Note(string item)
    {
        if (seen.Add(item)) items.Add(item);
    }

    /// <summary>In a line without blanks: a slug has none, nor has a code.</summary>
    public override string ToString() => string.Join(Separator, items);
}
