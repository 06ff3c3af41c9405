using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Site.Asking;

namespace GuideGen.Site.Planning;

/// <summary>A page the site will have.</summary>
/// <param name="Template">The theme's template that draws it.</param>
public abstract record PlannedPage(string Address, string Template)
{
    /// <summary>The entry whose text the page shows; null for a page that shows no entry's text.</summary>
    public virtual IGuideEntry? Shown => null;

    /// <summary>What the page is about, see <see cref="GuideItem"/>; null for a page that stands once.</summary>
    public virtual string? Item => null;
}

public sealed record EntryPage(IGuideEntry Entry, string Template) : PlannedPage(Addresses.Of(Entry), Template)
{
    public override IGuideEntry Shown => Entry;

    public override string Item => GuideItem.Of(Entry);
}

/// <param name="Own">What the guide itself says about the code, if it does.</param>
public sealed record CodeInfoPage(TroubleCode Code, CodePage? Own) : PlannedPage(Addresses.Of(Code), "code")
{
    public override IGuideEntry? Shown => Own;

    public override string Item => GuideItem.FaultsByCode + Code;
}

/// <summary>Every standard code that shares three characters, and those of this guide.</summary>
public sealed record CodeGroupPage(CodeGroup Group) : PlannedPage(Addresses.OfGroup(Group.Name), "code-group");

/// <summary>All entries of a kind, in the order to show them.</summary>
public sealed record ListPage(ContentKind Kind, ImmutableArray<IGuideEntry> Entries) : PlannedPage(Addresses.ListOf(Kind), "list")
{
    public override string Item => GuideItem.All(Kind);
}

/// <summary>An old address of a page, which leads on to it.</summary>
public sealed record MovedPage(string From, IGuideEntry To) : PlannedPage(From, "moved")
{
    public override string Item => GuideItem.Of(To);
}

/// <summary>How to write pages of a kind.</summary>
public sealed record WritingPage(ContentKind Kind) : PlannedPage(Addresses.OfWriting(Kind), "writing-kind");

/// <summary>A page that stands once: home, codes, safety, terms, not found.</summary>
public sealed record SinglePage(string Address, string Template) : PlannedPage(Address, Template);
