using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Pages;

/// <summary>
/// What the rules need to know of the Markdown under a front matter. The text itself stays in the source;
/// the syntax tree is not kept, since ten thousand of them would not fit into memory.
/// </summary>
/// <param name="Start">Offset in the source at which the Markdown begins.</param>
/// <param name="Sections">The parts under the headings of level 2, in order.</param>
public sealed record PageBody(
    int Start,
    ImmutableArray<Heading> Headings,
    ImmutableArray<Section> Sections,
    ImmutableArray<PageLink> Links,
    ImmutableArray<TextRun> Runs)
{
    /// <summary>Pieces of raw HTML, in order; none unless the guide's settings allow some.</summary>
    public ImmutableArray<Located<string>> Html { get; init; } = [];

    /// <summary>The codes that stand in the text, each once, in their order.</summary>
    public ImmutableArray<TroubleCode> Codes { get; init; } = [];

    /// <summary>Language tag of the text, on which the titles of its sections depend.</summary>
    public string Language { get; init; } = "en";

    public static PageBody Empty { get; } = new(0, [], [], [], []);

    /// <param name="title">As the plan of sections has it, in English.</param>
    public Section? Find(string title) => FindAll(title).FirstOrDefault();

    /// <summary>All sections of that title; more than one if the author wrote it twice.</summary>
    public IEnumerable<Section> FindAll(string title) =>
        Sections.Where(s => string.Equals(s.Title.Value, SectionTitles.In(Language, title), StringComparison.OrdinalIgnoreCase));

    public IEnumerable<TextRun> RunsOf(Section section) =>
        Runs.Where(r => r.Start >= section.Start && r.Start < section.End);

    /// <summary>True if nothing but headings stands in the section.</summary>
    public bool IsEmpty(Section section) =>
        RunsOf(section).All(r => r.IsHeading)
        && !Links.Any(l => l.Label.Span.Start >= section.Start && l.Label.Span.Start < section.End);
}

public sealed record Heading(int Level, Located<string> Text, string Anchor);

/// <param name="Start">Offset behind the heading.</param>
/// <param name="End">Offset of the next heading of level 2 or of the end.</param>
public sealed record Section(Located<string> Title, int Start, int End);

/// <summary>A link or a picture.</summary>
/// <param name="Label">The linked words, or the picture's text alternative.</param>
public sealed record PageLink(Located<string> Target, Located<string> Label, bool IsPicture);

/// <summary>A stretch of running text in the source.</summary>
/// <param name="Block">Counts the blocks of the page: runs of one block read as one text.</param>
public readonly record struct TextRun(int Start, int Length, int Block, bool IsHeading = false);
