using System.Collections.Immutable;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Yaml;

/// <summary>A piece of structured text with the place it was written at.</summary>
public abstract record YamlNode(SourceSpan Span);

/// <param name="IsQuoted">True for text in quotes or a block: it is text even if it looks like a number.</param>
public sealed record YamlScalar(string Value, bool IsQuoted, SourceSpan Span) : YamlNode(Span)
{
    public bool IsEmpty => !IsQuoted && Value is "" or "~" or "null";
}

public sealed record YamlList(ImmutableArray<YamlNode> Items, SourceSpan Span) : YamlNode(Span);

/// <summary>Entries in the order they were written; a key stands once (the first one counts).</summary>
public sealed record YamlMap(ImmutableArray<YamlEntry> Entries, SourceSpan Span) : YamlNode(Span)
{
    public YamlEntry? Find(string key) => Entries.FirstOrDefault(e => e.Key.Value == key);
}

public sealed record YamlEntry(YamlScalar Key, YamlNode Value);
