using System.Collections.Immutable;
using GuideGen.Search.Lunr;

namespace GuideGen.Search;

/// <summary>One page as the search sees it. All texts are plain text, no markup.</summary>
/// <param name="Address">Relative address of the page; unique in a guide.</param>
/// <param name="Name">The page's title.</param>
/// <param name="Codes">Trouble codes the page is about, as printed.</param>
/// <param name="Summary">What the page says in short: its lead and its headings.</param>
/// <param name="Body">The rest of the page's words.</param>
public sealed record SearchDocument(string Address, string Name, ImmutableArray<string> Codes, string Summary, string Body)
{
    /// <summary>A word in a page's name tells more of it than one in its text, and a code tells most.</summary>
    public static ImmutableArray<SearchField> Fields { get; } =
        [new("name", 10), new("codes", 20), new("summary", 4), new("body", 1)];

    public static LunrIndex Index(ImmutableArray<SearchDocument> documents) => Index(documents.Length, i => documents[i]);

    /// <param name="count">How many documents there are.</param>
    /// <param name="make">Gives the document of a number from 0 on, asked at most once for each and side by side.</param>
    /// <param name="recall">Asked side by side; null if nothing is kept.</param>
    public static LunrIndex Index(int count, Func<int, SearchDocument> make, RecallChunk? recall = null) =>
        LunrIndexBuilder.Build(Fields, count, i => make(i).ToLunr(), recall);

    LunrDocument ToLunr() => new(Address, [Name, string.Join(' ', Codes), Summary, Body]);
}
