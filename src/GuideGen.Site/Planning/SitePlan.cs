using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Links;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Site.Rendering;
using GuideGen.Site.Trees;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Planning;

/// <summary>The fourth stage: which pages exist, where they stand and how they hang together.</summary>
public sealed record SitePlan
{
    SitePlan(GuideContent guide, GuideWeights weights, ImmutableArray<TroubleCode> codes)
    {
        // Beside all that follows.
        var relations = Task.Run(() => new Relations(guide, c => weights.Proofs[c.Origin.Slug].Level.Counts()));
        Guide = guide;
        Folder = FolderOf(guide.Editions, guide.Settings.Language.Value);
        Cleaner = guide.Settings.Html.IsEmpty ? null : new HtmlCleaner(guide.Settings.Html.Select(h => h.Value));
        Weights = weights;
        Links = new LinkTable(guide);
        Codes = codes;
        Groups = CodeGroup.All(Codes);
        Pages = [.. PagesOf(guide)];
        CodeSet = Codes.ToFrozenSet();
        // Not its other names: 'ground' is another name of the earth, but vans stand on it, too.
        Terms = new PhraseFinder<string>(guide.Terms.Select(t => (t.Key.Value, Anchors.Of(t.Key.Value))));
        Evidence = new GuideEvidence(guide, weights);
        Figures = new TreeFigures(guide, weights);
        HasFeed = guide.Settings.Base is not null && guide.Entries.Any(e => Provenances.Of(e).Reviewed is not null);
        Common = CommonOf(guide);
        Relations = relations.GetAwaiter().GetResult();
    }

    public GuideContent Guide { get; private init; }

    /// <summary>Where this edition of the guide stands in the site: empty for the first, else a folder with a slash behind it.</summary>
    public string Folder { get; }

    /// <summary>For a guide that allows some HTML in its pages; null for all others.</summary>
    internal HtmlCleaner? Cleaner { get; }

    public GuideWeights Weights { get; }

    public GuideEvidence Evidence { get; }

    public TreeFigures Figures { get; }

    public LinkTable Links { get; private init; }

    /// <summary>Every code the guide names, in whichever of its languages, in order: each has a page.</summary>
    public ImmutableArray<TroubleCode> Codes { get; }

    public FrozenSet<TroubleCode> CodeSet { get; }

    /// <summary>Every standard code and every code of the guide, by their first three characters.</summary>
    public ImmutableArray<CodeGroup> Groups { get; }

    public Relations Relations { get; }

    /// <summary>The words of the guide's terms, each with its place on the page of terms.</summary>
    public PhraseFinder<string> Terms { get; }

    public ImmutableArray<PlannedPage> Pages { get; private init; }

    /// <summary>True where the site has a list of the pages that were read through last.</summary>
    public bool HasFeed { get; }

    /// <summary>Of what every file of the site can show without asking for it: the files that concern every page, which pages there are, and the feed.</summary>
    public Digest Common { get; }

    public static SitePlan Make(GuideContent guide) => Make([(guide, GuideWeights.Of(guide))])[0];

    /// <summary>The plans of all editions of a guide: each has the same pages as the others.</summary>
    public static ImmutableArray<SitePlan> Make(ImmutableArray<(GuideContent Guide, GuideWeights Weights)> editions)
    {
        ImmutableArray<TroubleCode> codes = [.. editions.SelectMany(e => CodeUses.All(e.Guide)).Distinct().Order()];
        return [.. editions.Select(e => new SitePlan(e.Guide, e.Weights, codes))];
    }

    /// <summary>The plan of a guide that has other running text in its pages, and the same frame.</summary>
    public SitePlan For(GuideContent guide)
    {
        if (ReferenceEquals(guide, Guide)) return this;
        var entries = guide.Entries.ToDictionary(e => e.Origin.Path);
        return this with { Guide = guide, Links = new LinkTable(guide), Pages = [.. Pages.Select(Now)] };

        PlannedPage Now(PlannedPage page) => page switch
        {
            EntryPage entry => entry with { Entry = entries[entry.Entry.Origin.Path] },
            CodeInfoPage { Own: { } own } code => code with { Own = (CodePage)entries[own.Origin.Path] },
            _ => page,
        };
    }

    /// <param name="language">Language tag of an edition.</param>
    /// <param name="editions">See <see cref="GuideContent.Editions"/>.</param>
    public static string FolderOf(ImmutableArray<string> editions, string language) => language == editions[0] ? "" : language + "/";

    Digest CommonOf(GuideContent guide)
    {
        using var common = new Digester();
        common.Add(guide.Common).Add(HasFeed ? "with a feed" : "without one");
        foreach (var code in Codes) common.Add(code.ToString());
        return common.Take();
    }

    IEnumerable<PlannedPage> PagesOf(GuideContent guide) =>
    [
        new SinglePage(Addresses.Home, "home"),
        new SinglePage(Addresses.ListOf(ContentKind.Code), "codes"),
        new SinglePage(Addresses.Conditions, "conditions"),
        new SinglePage(Addresses.Report, "report"),
        new SinglePage(Addresses.Map, "map"),
        new SinglePage(Addresses.Record, "record"),
        new SinglePage(Addresses.Weigh, "weigh"),
        new SinglePage(Addresses.CaseForm, "report-a-case"),
        new SinglePage(Addresses.Safety, "safety"),
        new SinglePage(Addresses.Terms, "terms"),
        new SinglePage(Addresses.Evidence, "evidence"),
        new SinglePage(Addresses.Rules, "rules"),
        new SinglePage(Addresses.Writing, "writing"),
        .. Enum.GetValues<ContentKind>().Select(k => new WritingPage(k)),
        new SinglePage(Addresses.About, "about"),
        new SinglePage(Addresses.NotFound, "not-found"),
        .. new[] { ContentKind.Fault, ContentKind.Symptom, ContentKind.Check, ContentKind.Part, ContentKind.Task, ContentKind.Tree }.Select(k => List(guide, k)),
        .. guide.Faults.All.Select(e => new EntryPage(e, "fault")),
        .. guide.Symptoms.All.Select(e => new EntryPage(e, "symptom")),
        .. guide.Checks.All.Select(e => new EntryPage(e, "check")),
        .. guide.Parts.All.Select(e => new EntryPage(e, "part")),
        .. guide.Tasks.All.Select(e => new EntryPage(e, "task")),
        .. guide.Trees.All.Select(e => new EntryPage(e, "tree")),
        .. Codes.Select(c => new CodeInfoPage(c, guide.Codes.Find(c.ToString()))),
        .. Groups.Select(g => new CodeGroupPage(g)),
        .. guide.Entries.SelectMany(e => Provenances.Of(e).Formerly.Select(f => new MovedPage(f.Value, e))),
    ];

    static ListPage List(GuideContent guide, ContentKind kind)
    {
        var ofKind = guide.Entries.Where(e => e.Origin.Kind == kind);
        return new ListPage(kind, [.. ofKind.OrderBy(e => e.Name.Value, StringComparer.InvariantCultureIgnoreCase).ThenBy(e => e.Origin.Slug, StringComparer.Ordinal)]);
    }
}
