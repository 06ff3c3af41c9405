using System.Collections.Immutable;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>Where a piece of the guide came from: its slug, its file and, for a page, the text under the front matter.</summary>
/// <param name="Source">The file with the words: of a translated page the translation.</param>
public sealed record PageOrigin(ContentKind? Kind, string Slug, SourceText Source, PageBody Body)
{
    /// <summary>The file by which other pages name it: of a translated page the original.</summary>
    public string Path { get; init; } = Source.Path;

    /// <summary>True where the words are a translation's.</summary>
    public bool IsTranslated => Path != Source.Path;

    /// <summary>Of all that was read for it: path and content of the file, and of its translation.</summary>
    public Digest Whole { get; init; }

    /// <summary>Of what other files can know of this one: all but the running text of a page, of which only headings and codes.</summary>
    public Digest Face { get; init; }
}

/// <summary>A file of the guide that has a name and an address of its own.</summary>
public interface IGuideEntry
{
    PageOrigin Origin { get; }

    Located<string> Name { get; }

    Located<string> Summary { get; }

    /// <summary>The variants it applies to; empty means all.</summary>
    ImmutableArray<Located<string>> Variants { get; }

    ImmutableArray<Dismissal> Dismissals { get; }
}

/// <summary>An entry in which somebody puts a hand to the vehicle.</summary>
public interface IHandsOnPage : IGuideEntry
{
    ImmutableArray<Located<string>> Hazards { get; }

    ImmutableArray<Located<string>> Tools { get; }

    /// <summary>Slugs of the parts that the page is about.</summary>
    ImmutableArray<Located<string>> Parts { get; }
}

/// <summary>An author's written decision that a finding does not hold on this page.</summary>
/// <param name="About">Which hazard, code or name the finding is about; null for all findings of the rule.</param>
public sealed record Dismissal(Located<string> Rule, Located<string>? About, Located<string> Reason);

/// <summary>When a page was last read through by somebody who knows, and what it rests on.</summary>
public sealed record Provenance(Located<DateOnly>? Reviewed, ImmutableArray<Located<string>> Sources, ImmutableArray<Located<string>> Formerly)
{
    /// <summary>Who read it through, as they want to be called.</summary>
    public Located<string>? ReviewedBy { get; init; }

    /// <summary>Slugs of the variants that it was compared with when it was read through.</summary>
    public ImmutableArray<Located<string>> ReviewedOn { get; init; } = [];
}
