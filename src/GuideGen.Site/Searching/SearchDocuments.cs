using System.Collections.Immutable;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Search;
using GuideGen.Site.Planning;
using GuideGen.Site.Views;

namespace GuideGen.Site.Searching;

/// <summary>The pages of a site as the search sees them. Everyday words find trade words through the guide's terms.</summary>
sealed class SearchDocuments
{
    const int LongestExcerpt = 180;

    readonly ViewContext view;
    readonly PhraseFinder<ImmutableArray<string>> names;

    public SearchDocuments(SitePlan plan, ViewContext view)
    {
        this.view = view;
        Pages = [.. plan.Pages.Where(p => p is EntryPage or CodeInfoPage)];
        names = new PhraseFinder<ImmutableArray<string>>(
            from term in view.Guide.Terms
            let all = term.Value.Also.Select(a => a.Value).Prepend(term.Key.Value).ToImmutableArray()
            from name in all
            select (name, all));
    }

    /// <summary>The pages that can be found.</summary>
    public ImmutableArray<PlannedPage> Pages { get; }

    public SearchDocument DocumentOf(PlannedPage page) => page switch
    {
        EntryPage { Entry: var entry } => OfEntry(page.Address, entry),
        CodeInfoPage code => OfCode(code),
        _ => throw NotFindable(page),
    };

    public SearchCard CardOf(PlannedPage page) => page switch
    {
        EntryPage { Entry: var entry } => new SearchCard(page.Address, entry.Name.Value, NameKinds.Folder(entry.Origin.Kind!.Value), CodesOf(entry), Excerpt(entry.Summary.Value)),
        CodeInfoPage code => new SearchCard(page.Address, CodeWords.MeaningOf(view, code.Code), NameKinds.Folder(ContentKind.Code), [code.Code.ToString()], Excerpt(SummaryOf(code))),
        _ => throw NotFindable(page),
    };

    SearchDocument OfEntry(string address, IGuideEntry entry)
    {
        // An author chooses a slug for what the page is about, often in other words than its name.
        var slug = entry.Origin.Slug.Replace('-', ' ');
        var lead = string.Join(' ', [entry.Summary.Value, slug, .. AlsoOf(entry), .. entry.Origin.Body.Headings.Select(h => h.Text.Value)]);
        var body = string.Join(' ', entry.Origin.Body.Runs.Select(r => entry.Origin.Source.Text.Substring(r.Start, r.Length)));
        return new SearchDocument(address, WithOtherNames(entry.Name.Value), CodesOf(entry), WithOtherNames(lead), entry is Tree tree ? Steps(tree) : body);
    }

    // A meaning is no name: a word in it must not outrank the page of a fault that bears the word in its name.
    SearchDocument OfCode(CodeInfoPage page) => new(page.Address, "", [page.Code.ToString()], WithOtherNames(CodeWords.MeaningOf(view, page.Code) + ". " + SummaryOf(page)), "");

    string SummaryOf(CodeInfoPage page) => page.Own?.Summary.Value ?? string.Join(", ", view.Guide.Relations.FaultsByCode(page.Code).Select(f => f.Fault.Name.Value));

    static InvalidOperationException NotFindable(PlannedPage page) => new($"the search does not find {page.Address}");

    /// <summary>The text, and every other name of the terms that stand in it.</summary>
    string WithOtherNames(string text)
    {
        var words = Words.Whole(text).ConvertAll(w => w with { FollowsPause = false });
        return string.Join(' ', names.Find(words).SelectMany(f => f.Tag).Distinct().Prepend(text));
    }

    static ImmutableArray<string> CodesOf(IGuideEntry entry) => entry is Fault fault ? [.. fault.Codes.Select(c => c.Key.Value.ToString())] : [];

    static IEnumerable<string> AlsoOf(IGuideEntry entry) => entry switch
    {
        Symptom symptom => symptom.Also.Select(a => a.Value),
        Part part => part.Also.Select(a => a.Value),
        _ => [],
    };

    static string Steps(Tree tree) => string.Join(' ', tree.Nodes.Select(n => n.Value).OfType<AskNode>().Select(a => a.Question.Value));

    static string Excerpt(string text) => text.Length <= LongestExcerpt ? text : text[..text.LastIndexOf(' ', LongestExcerpt)] + " …";
}
