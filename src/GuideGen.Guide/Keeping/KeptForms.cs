using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Keeping;

/// <summary>Bytes as they are.</summary>
sealed class BytesForm : IKeptForm<byte[]>
{
    public static BytesForm Only { get; } = new();

    public void Write(KeptWriter writer, byte[] value) => writer.Bytes(value);

    public byte[] Read(ref KeptReader reader) => reader.Bytes().ToArray();
}

/// <param name="source">The text that the nodes are places of.</param>
sealed class YamlForm(SourceText source) : IKeptForm<YamlNode>
{
    const int Plain = 0, Quoted = 1, List = 2, Map = 3;

    public void Write(KeptWriter writer, YamlNode value)
    {
        switch (value)
        {
            case YamlScalar scalar:
                writer.Number(scalar.IsQuoted ? Quoted : Plain);
                writer.Said(new(scalar.Value, scalar.Span));
                break;
            case YamlList list:
                writer.Number(List);
                writer.Place(list.Span);
                writer.All(list.Items, item => Write(writer, item));
                break;
            case YamlMap map:
                writer.Number(Map);
                writer.Place(map.Span);
                writer.All(map.Entries, entry =>
                {
                    Write(writer, entry.Key);
                    Write(writer, entry.Value);
                });
                break;
        }
    }

    public YamlNode Read(ref KeptReader reader)
    {
        var kind = reader.Number();
        if (kind is Plain or Quoted)
        {
            var (value, place) = reader.Said(source);
            return new YamlScalar(value, kind == Quoted, place);
        }

        var span = reader.Place(source);
        return kind == List
            ? new YamlList(reader.All(Read), span)
            : new YamlMap(reader.All((ref KeptReader r) => new YamlEntry((YamlScalar)Read(ref r), Read(ref r))), span);
    }
}

/// <param name="source">The text of the page.</param>
sealed class BodyForm(SourceText source) : IKeptForm<PageBody>
{
    public void Write(KeptWriter writer, PageBody value)
    {
        writer.Number(value.Start);
        writer.All(value.Headings, heading =>
        {
            writer.Number(heading.Level);
            writer.Said(heading.Text);
            writer.Text(heading.Anchor);
        });
        writer.All(value.Sections, section =>
        {
            writer.Said(section.Title);
            writer.Number(section.Start);
            writer.Number(section.End);
        });
        writer.All(value.Links, link =>
        {
            writer.Said(link.Target);
            writer.Said(link.Label);
            writer.Flag(link.IsPicture);
        });
        writer.All(value.Runs, run =>
        {
            writer.Number(run.Start);
            writer.Number(run.Length);
            writer.Number(run.Block);
            writer.Flag(run.IsHeading);
        });
        writer.All(value.Html, writer.Said);
        writer.All(value.Codes, code => writer.Number(code.Value));
    }

    public PageBody Read(ref KeptReader reader) => new(
        reader.Number(),
        reader.All((ref KeptReader r) => new Heading(r.Number(), r.Said(source), r.Text())),
        reader.All((ref KeptReader r) => new Section(r.Said(source), r.Number(), r.Number())),
        reader.All((ref KeptReader r) => new PageLink(r.Said(source), r.Said(source), r.Flag())),
        reader.All((ref KeptReader r) => new TextRun(r.Number(), r.Number(), r.Number(), r.Flag())))
    {
        Html = reader.All((ref KeptReader r) => r.Said(source)),
        Codes = reader.All((ref KeptReader r) => new TroubleCode((ushort)r.Number())),
    };
}

/// <summary>Findings that speak of one page only.</summary>
/// <param name="source">The text of the page.</param>
sealed class FindingsForm(SourceText source) : IKeptForm<ImmutableArray<Finding>>
{
    static readonly ImmutableArray<Rule> Known = [.. Rules.All];

    public bool Fits(ImmutableArray<Finding> findings) => findings.All(f => f.Span.Source == source && f.RestsOn.IsEmpty && f.AlsoOn is null);

    public void Write(KeptWriter writer, ImmutableArray<Finding> value)
    {
        writer.All(value, finding =>
        {
            writer.Number(Known.IndexOf(finding.Rule));
            writer.Number((int)finding.Severity);
            writer.Place(finding.Span);
            writer.Text(finding.Message);
            writer.Text(finding.Hint);
            writer.Text(finding.About);
        });
    }

    public ImmutableArray<Finding> Read(ref KeptReader reader) => reader.All((ref KeptReader r) =>
        new Finding(Known[r.Number()], (Severity)r.Number(), r.Place(source), r.Text(), r.Text(), r.Text()));
}
