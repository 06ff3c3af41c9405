using System.Collections.Immutable;

namespace GuideGen.Search.Lunr;

/// <summary>What the builder hands to the index; see there for what each part means. The rows of ByText are in no order yet.</summary>
sealed record IndexParts(
    ImmutableArray<string> Refs, ImmutableArray<string> Terms, ImmutableArray<string> Forms, int[] Lengths, Frequencies ByText);
