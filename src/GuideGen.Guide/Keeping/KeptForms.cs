using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Keeping;

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
                writer.Number(list.Items.Length);
                foreach (var item in list.Items) Write(writer, item);
                break;
            case YamlMap map:
                writer.Number(Map);
                writer.Place(map.Span);
                writer.Number(map.Entries.Length);
                foreach (var (key, item) in map.Entries)
                {
                    Write(writer, key);
                    Write(writer, item);
                }

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
        var count = reader.Number();
        if (kind == List)
        {
            var items = ImmutableArray.CreateBuilder<YamlNode>(count);
            for (var i = 0; i < count; i++) items.Add(Read(ref reader));
            return new YamlList(items.MoveToImmutable(), span);
        }

        var entries = ImmutableArray.CreateBuilder<YamlEntry>(count);
        for (var i = 0; i < count; i++) entries.Add(new YamlEntry((YamlScalar)Read(ref reader), Read(ref reader)));
        return new YamlMap(entries.MoveToImmutable(), span);
    }
}

/// <param name="source">The text of the page.</param>
sealed class BodyForm(SourceText source) : IKeptForm<PageBody>
{
    public void Write(KeptWriter writer, PageBody value)
    {
        writer.Number(value.Start);
        writer.Number(value.Headings.Length);
        foreach (var heading in value.Headings)
        {
            writer.Number(heading.Level);
            writer.Said(heading.Text);
            writer.Text(heading.Anchor);
        }

        writer.Number(value.Sections.Length);
        foreach (var section in value.Sections)
        {
            writer.Said(section.Title);
            writer.Number(section.Start);
            writer.Number(section.End);
        }

        writer.Number(value.Links.Length);
        foreach (var link in value.Links)
        {
            writer.Said(link.Target);
            writer.Said(link.Label);
            writer.Flag(link.IsPicture);
        }

        writer.Number(value.Runs.Length);
        foreach (var run in value.Runs)
        {
            writer.Number(run.Start);
            writer.Number(run.Length);
            writer.Number(run.Block);
            writer.Flag(run.IsHeading);
        }

        writer.Number(value.Html.Length);
        foreach (var html in value.Html) writer.Said(html);
        writer.Number(value.Codes.Length);
        foreach (var code in value.Codes) writer.Number(code.Value);
    }

    public PageBody Read(ref KeptReader reader)
    {
        var start = reader.Number();
        var headings = new Heading[reader.Number()];
        for (var i = 0; i < headings.Length; i++) headings[i] = new Heading(reader.Number(), reader.Said(source), reader.Text());
        var sections = new Section[reader.Number()];
        for (var i = 0; i < sections.Length; i++) sections[i] = new Section(reader.Said(source), reader.Number(), reader.Number());
        var links = new PageLink[reader.Number()];
        for (var i = 0; i < links.Length; i++) links[i] = new PageLink(reader.Said(source), reader.Said(source), reader.Flag());
        var runs = new TextRun[reader.Number()];
        for (var i = 0; i < runs.Length; i++) runs[i] = new TextRun(reader.Number(), reader.Number(), reader.Number(), reader.Flag());
        var html = new Located<string>[reader.Number()];
        for (var i = 0; i < html.Length; i++) html[i] = reader.Said(source);
        var codes = new TroubleCode[reader.Number()];
        for (var i = 0; i < codes.Length; i++) codes[i] = new TroubleCode((ushort)reader.Number());
        return new PageBody(start, [.. headings], [.. sections], [.. links], [.. runs]) { Html = [.. html], Codes = [.. codes] };
    }
}

/// <summary>Findings that speak of one page only.</summary>
/// <param name="source">The text of the page.</param>
sealed class FindingsForm(SourceText source) : IKeptForm<ImmutableArray<Finding>>
{
    static readonly ImmutableArray<Rule> Known = [.. Rules.All];

    public bool Fits(ImmutableArray<Finding> findings) => findings.All(f => f.Span.Source == source && f.RestsOn.IsEmpty && f.AlsoOn is null);

    public void Write(KeptWriter writer, ImmutableArray<Finding> value)
    {
        writer.Number(value.Length);
        foreach (var finding in value)
        {
            writer.Number(Known.IndexOf(finding.Rule));
            writer.Number((int)finding.Severity);
            writer.Place(finding.Span);
            writer.Text(finding.Message);
            writer.Text(finding.Hint);
            writer.Text(finding.About);
        }
    }

    public ImmutableArray<Finding> Read(ref KeptReader reader)
    {
        var findings = new Finding[reader.Number()];
        for (var i = 0; i < findings.Length; i++)
            findings[i] = new Finding(Known[reader.Number()], (Severity)reader.Number(), reader.Place(source), reader.Text(), reader.Text(), reader.Text());
        return [.. findings];
    }
}
