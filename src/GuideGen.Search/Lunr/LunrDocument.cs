using System.Collections.Immutable;

namespace GuideGen.Search.Lunr;

/// <summary>A field of the index. The name is of lower-case letters; the boost is above 0.</summary>
public sealed record SearchField(string Name, double Boost);

/// <summary>What lunr is given: a reference, unique in the index, and one text per field in the fields' order.</summary>
public sealed record LunrDocument(string Ref, ImmutableArray<string> Texts);
