using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace GuideGen.Guide.Yaml;

/// <summary>Reads YAML 1.2 into nodes with places, from the event reader of YamlDotNet.</summary>
/// <remarks>
/// Anchors, aliases, tags and several documents are refused: nobody needs them in a guide, and they are how
/// a small file becomes a huge one. Depth and number of nodes are bounded by <see cref="GuideLimits"/>.
/// </remarks>
public sealed class YamlReader
{
    readonly SourceText source;
    readonly int offset;
    readonly int length;
    readonly Scanner scanner;
    readonly Parser parser;
    readonly FindingList findings;
    int nodes;
    bool isRefused;

    YamlReader(SourceText source, int start, int length, FindingList findings)
    {
        this.source = source;
        this.findings = findings;
        offset = start;
        this.length = length;
        scanner = new Scanner(new StringReader(source.Text.Substring(start, length)), skipComments: true);
        parser = new Parser(scanner);
    }

    /// <returns>The root node, or null if the text is empty or a finding says why it cannot be read.</returns>
    public static YamlNode? Read(SourceText source, int start, int length, FindingList findings)
    {
        var reader = new YamlReader(source, start, length, findings);
        try
        {
            return reader.ReadDocument();
        }
        catch (YamlException fault)
        {
            findings.Add(reader.Explain(fault));
            return null;
        }
        catch (InvalidOperationException)
        {
            // What the scanner throws where plain text in an unclosed bracket runs into the next key.
            findings.Add(Rules.YamlSyntax.At(reader.PlaceOf(reader.scanner.CurrentPosition), "a bracket is not closed"));
            return null;
        }
        catch (ArgumentOutOfRangeException)
        {
            // What the scanner throws for an escape beyond the last character of Unicode.
            findings.Add(Rules.YamlSyntax.At(reader.PlaceOf(reader.scanner.CurrentPosition), "an escape stands for no character"));
            return null;
        }
        catch (ArgumentException)
        {
            // What the parser throws for a tag that cannot be an address.
            findings.Add(Rules.YamlRefused.At(reader.PlaceOf(reader.scanner.CurrentPosition), "a tag"));
            return null;
        }
    }

    public static YamlNode? Read(SourceText source, FindingList findings) => Read(source, 0, source.Text.Length, findings);

    Finding Explain(YamlException fault) => FirstTabIndent() is { } tab
        ? Rules.YamlSyntax.At(tab, "a tab stands where blanks belong")
        : Rules.YamlSyntax.At(PlaceOf(fault.Start), YamlObjections.Plain(fault.Message));

    /// <summary>A tab as indent makes the scanner stumble at some other place, so it is looked for.</summary>
    SourceSpan? FirstTabIndent()
    {
        var first = source.PositionAt(offset).Line;
        for (var line = first; line <= source.LineCount && source.StartOf(line) < offset + length; line++)
        {
            var text = source.Line(line);
            var indent = text[..^text.TrimStart().Length];
            if (indent.Contains('\t')) return source.Span(source.StartOf(line) + indent.IndexOf('\t'), 1);
        }

        return null;
    }

    YamlNode? ReadDocument()
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _)) return null;
        parser.Consume<DocumentStart>();
        var root = ReadNode(0);
        if (isRefused) return null;
        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out var second)) Refuse(second, "a second document in one file");
        return isRefused || root is YamlScalar { IsEmpty: true } ? null : root;
    }

    YamlNode ReadNode(int depth)
    {
        if (parser.Current is null) parser.MoveNext();
        var start = parser.Current!;
        if (Objection(start, depth) is { } objection) return Refuse(start, objection);
        return start switch
        {
            MappingStart => ReadMap(depth),
            SequenceStart => ReadList(depth),
            _ => ReadScalar(),
        };
    }

    string? Objection(ParsingEvent start, int depth) => start switch
    {
        AnchorAlias => "an alias",
        NodeEvent { Anchor.IsEmpty: false } => "an anchor",
        NodeEvent node when !node.Tag.IsEmpty && node.Tag.ToString() != "!" => "a tag",
        _ when depth > GuideLimits.YamlDepth => $"more than {GuideLimits.YamlDepth} levels",
        _ when ++nodes > GuideLimits.YamlNodes => $"more than {GuideLimits.YamlNodes} values",
        _ => null,
    };

    YamlScalar Refuse(ParsingEvent at, string what)
    {
        if (!isRefused) findings.Add(Rules.YamlRefused.At(Place(at.Start, at.End), what));
        isRefused = true;
        return new YamlScalar("", false, Place(at.Start, at.End));
    }

    YamlScalar ReadScalar()
    {
        var scalar = parser.Consume<Scalar>();
        return new YamlScalar(scalar.Value, scalar.Style != ScalarStyle.Plain, Place(scalar.Start, scalar.End));
    }

    YamlList ReadList(int depth)
    {
        var start = parser.Consume<SequenceStart>();
        var items = ImmutableArray.CreateBuilder<YamlNode>();
        while (!isRefused && !parser.Accept<SequenceEnd>(out _)) items.Add(ReadNode(depth + 1));
        var end = isRefused ? start.End : parser.Consume<SequenceEnd>().End;
        return new YamlList(items.ToImmutable(), Place(start.Start, end));
    }

    YamlMap ReadMap(int depth)
    {
        var start = parser.Consume<MappingStart>();
        var entries = ImmutableArray.CreateBuilder<YamlEntry>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (!isRefused && !parser.Accept<MappingEnd>(out _))
        {
            if (ReadNode(depth + 1) is not YamlScalar key)
            {
                Refuse(start, "a key that is not plain text");
                break;
            }

            var value = isRefused ? key : ReadNode(depth + 1);
            if (seen.Add(key.Value)) entries.Add(new YamlEntry(key, value));
            else findings.Add(Rules.KeyDuplicate.At(key.Span, key.Value));
        }

        var end = isRefused ? start.End : parser.Consume<MappingEnd>().End;
        return new YamlMap(entries.ToImmutable(), Place(start.Start, end));
    }

    SourceSpan Place(Mark from, Mark to)
    {
        var start = offset + (int)from.Index;
        var end = offset + (int)to.Index;
        while (end > start && end <= source.Text.Length && char.IsWhiteSpace(source.Text[end - 1])) end--;
        return source.Span(start, Math.Max(0, Math.Min(end, source.Text.Length) - start));
    }

    SourceSpan PlaceOf(Mark mark) => source.Span(Math.Min(offset + (int)mark.Index, source.Text.Length), 0);
}
