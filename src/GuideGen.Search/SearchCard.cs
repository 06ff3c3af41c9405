using System.Collections.Immutable;

namespace GuideGen.Search;

/// <summary>What a search result shows of a page. Plain text throughout.</summary>
/// <param name="Address">Relative address of the page, as in <see cref="SearchDocument"/>.</param>
/// <param name="Name">The page's title.</param>
/// <param name="Kind">What kind of page it is, in the theme's key for it (fault, symptom, check).</param>
/// <param name="Codes">Trouble codes the page is about, as printed.</param>
/// <param name="Excerpt">One or two sentences that tell what is on the page.</param>
public sealed record SearchCard(string Address, string Name, string Kind, ImmutableArray<string> Codes, string Excerpt);
