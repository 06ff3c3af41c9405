using System.Collections.Immutable;
using GuideGen.Guide;
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

    public SearchDocuments(ViewContext view)
    {
        this.view = view;
        names = new PhraseFinder<ImmutableArray<string>>(
            from term in view.Guide.Terms
            let all = term.Value.Also.Select(a => a.Value).Prepend(term.Key.Value).ToImmutableArray()
            from name in all
            select (name, all));
    }

    public ImmutableArray<(SearchDocument Document, SearchCard Card)> All() =>
        [.. SideBySide.Map(view.Plan.Pages, Of).OfType<(SearchDocument, SearchCard)>()];

    (SearchDocument Document, SearchCard Card)? Of(PlannedPage page) => page switch
    {
        EntryPage entry => OfEntry(entry.Address, entry.Entry),
        CodeInfoPage code => OfCode(code),
        _ => null,
    };

    (SearchDocument Document, SearchCard Card) OfEntry(string address, IGuideEntry entry)
    {
        var codes = CodesOf(entry);
        // An author chooses a slug for what the page is about, often in other words than its name.
        var slug = entry.Origin.Slug.Replace('-', ' ');
        var lead = string.Join(' ', [entry.Summary.Value, slug, .. AlsoOf(entry), .. entry.Origin.Body.Headings.Select(h => h.Text.Value)]);
        var body = string.Join(' ', entry.Origin.Body.Runs.Select(r => entry.Origin.Source.Text.Substring(r.Start, r.Length)));
        var document = new SearchDocument(address, WithOtherNames(entry.Name.Value), codes, WithOtherNames(lead), entry is Tree tree ? Steps(tree) : body);
        return (document, new SearchCard(address, entry.Name.Value, NameKinds.Folder(entry.Origin.Kind!.Value), codes, Excerpt(entry.Summary.Value)));
    }

    (SearchDocument Document, SearchCard Card) OfCode(CodeInfoPage page)
    {
        var meaning = CodeWords.MeaningOf(view, page.Code);
        ImmutableArray<string> codes = [page.Code.ToString()];
        var summary = page.Own?.Summary.Value ?? string.Join(", ", view.Plan.Relations.FaultsByCode[page.Code].Select(f => f.Fault.Name.Value));
        // A meaning is no name: a word in it must not outrank the page of a fault that bears the word in its name.
        var document = new SearchDocument(page.Address, "", codes, WithOtherNames(meaning + ". " + summary), "");
        return (document, new SearchCard(page.Address, meaning, NameKinds.Folder(ContentKind.Code), codes, Excerpt(summary)));
    }

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
