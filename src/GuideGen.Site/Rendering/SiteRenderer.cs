using System.Collections.Immutable;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Asking;
using GuideGen.Site.Planning;
using GuideGen.Site.Publishing;
using GuideGen.Site.Views;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>What the files of a site follow from, the tool and the looks of all editions included.</summary>
/// <param name="Common">With what every file can show without asking, see <see cref="SitePlan.Common"/>, of all editions.</param>
/// <param name="Frame">With all that pages can know of each other, of all editions.</param>
public sealed record SiteBasis(Digest Common, Digest Frame);

/// <summary>The fifth stage: draws the planned pages. Pages are independent of each other and can be drawn side by side.</summary>
/// <param name="basis">What files follow from that ask for nothing. Null if no file is to have a basis.</param>
/// <param name="memory">Of earlier compiles of the guide; null if there is none.</param>
public sealed class SiteRenderer(SitePlan plan, Theme theme, SiteBasis? basis = null, GuideMemory? memory = null)
{
    readonly Lazy<ItemDigests> items = new(() => new(plan, memory ?? GuideMemory.None));

    public GuideContent Guide => plan.Guide;

    /// <summary>Every file that follows from the plan and the theme, drawn only when it is asked for; the search is made meanwhile.</summary>
    public IEnumerable<SiteFile> Files()
    {
        var data = new DataScripts(plan, theme, Recall);
        IEnumerable<SiteFile> ofCommon = [.. theme.Assets.Files, WebManifest.Of(plan.Guide, theme.Assets), .. data.OfCommon()];
        IEnumerable<SiteFile> ofFrame = [.. PublishFiles.Of(plan), .. data.OfFrame()];
        return Pages().Concat(InFolder(On(basis?.Common, ofCommon))).Concat(InFolder(On(basis?.Frame, ofFrame))).Concat(InFolder(data.OfText()));
    }

    public IEnumerable<SiteFile> Pages() => InFolder(plan.Pages.Select(page =>
    {
        if (basis is null) return new SiteFile(page.Address, () => Draw(page));
        var asked = new AskedItems();
        return new SiteFile(page.Address, () => Draw(page, asked)) { Basis = new(() => KnownOf(page, basis), items, asked) };
    }));

    static IEnumerable<SiteFile> On(Digest? basis, IEnumerable<SiteFile> files) =>
        basis is { } known ? files.Select(f => f with { Basis = new(known) }) : files;

    /// <summary>Of what a page follows from before it asks for anything. The text of an entry is drawn on its own page only.</summary>
    Digest KnownOf(PlannedPage page, SiteBasis basis)
    {
        using var all = new Digester();
        all.Add(basis.Common).Add(page.Shown?.Origin.Whole ?? default);
        return page.Item is { } item ? all.Add(items.Value.Of(item)!.Value).Take() : all.Take();
    }

    /// <summary>What follows from what is known of pages in a row.</summary>
    byte[] Recall(ImmutableArray<PlannedPage> pages, Func<byte[]> make)
    {
        if (memory is null || basis is null) return make();
        using var all = new Digester();
        all.Add("search").Add(plan.Folder);
        foreach (var page in pages) all.Add(page.Address).Add(KnownOf(page, basis));
        return memory.Recall(all.Take(), make);
    }

    /// <summary>The files as they stand in a site with several editions.</summary>
    public IEnumerable<SiteFile> InFolder(IEnumerable<SiteFile> files) =>
        plan.Folder.Length == 0 ? files : files.Select(f => f with { Address = plan.Folder + f.Address, IsOfFirstEdition = false });

    public ClosingFile Closing() => ServiceWorker.Of(theme.Files);

    /// <summary>The page in UTF-8.</summary>
    /// <param name="asked">Takes down what is asked of the guide; null if nobody wants to know.</param>
    public byte[] Draw(PlannedPage page, AskedItems? asked = null)
    {
        var view = new ViewContext(plan, theme, page.Address, asked);
        using TextBuffer drawn = new(), named = new();
        theme.DrawPage(page.Template, ModelOf(view, page), drawn);
        theme.Assets.PutInto(drawn.Span, view.Links.Root, named);
        return named.ToUtf8();
    }

    /// <summary>What the template of a page is given; themes/contract/templates.md lists it.</summary>
    public ScriptObject ModelOf(PlannedPage page) => ModelOf(new ViewContext(plan, theme, page.Address), page);

    static ScriptObject ModelOf(ViewContext view, PlannedPage page)
    {
        var model = ViewOf(view, page);
        model["page"] = Frame(view, model, page);
        model["site"] = SiteOf(view);
        return model;
    }

    static ScriptObject ViewOf(ViewContext view, PlannedPage page) => page switch
    {
        EntryPage { Entry: Fault fault } => FaultView.Of(view, fault),
        EntryPage { Entry: Symptom symptom } => SymptomView.Of(view, symptom),
        EntryPage { Entry: Check check } => CheckView.Of(view, check),
        EntryPage { Entry: Part part } => PartView.Of(view, part),
        EntryPage { Entry: HowTo task } => TaskView.Of(view, task),
        EntryPage { Entry: Tree tree } => TreeView.Of(view, tree),
        CodeInfoPage code => CodeView.Of(view, code),
        CodeGroupPage group => CodeGroupView.Of(view, group.Group),
        MovedPage moved => MovedView.Of(view, moved),
        ListPage list => OverviewViews.List(view, list),
        SinglePage { Template: "home" } => OverviewViews.Home(view),
        SinglePage { Template: "codes" } => OverviewViews.Codes(view),
        SinglePage { Template: "conditions" } => CodeGroupView.Conditions(view),
        SinglePage { Template: "report" } => OverviewViews.Report(view),
        SinglePage { Template: "map" } => MapView.Of(view),
        SinglePage { Template: "record" } => OverviewViews.Record(view),
        SinglePage { Template: "weigh" } => WeighView.Of(view),
        SinglePage { Template: "report-a-case" } => CaseFormView.Of(view),
        SinglePage { Template: "safety" } => OverviewViews.Safety(view),
        SinglePage { Template: "evidence" } => SelfTestView.Of(view),
        SinglePage { Template: "terms" } => OverviewViews.Terms(view),
        SinglePage { Template: "rules" } => RulesView.Of(view),
        SinglePage { Template: "writing" } => WritingView.Of(view),
        WritingPage writing => WritingView.Of(view, writing.Kind),
        SinglePage { Template: "about" } => AboutView.Of(view),
        SinglePage { Template: "not-found" } => OverviewViews.NotFound(view),
        _ => throw new InvalidOperationException($"no view draws {page.Address}"),
    };

    static ScriptObject Frame(ViewContext view, ScriptObject model, PlannedPage page)
    {
        var frame = new ScriptObject
        {
            ["kind"] = page.Template,
            ["title"] = model["name"],
            ["description"] = model["summary"] ?? model["name"],
            ["root"] = view.Links.Root,
            ["address"] = page.Address,
            ["improve"] = ImproveLink.Of(view, page),
        };
        PageHead.AddTo(frame, view, page);
        EditionViews.AddTo(frame, view, page);
        return frame;
    }

    static ScriptObject SiteOf(ViewContext view) => new()
    {
        ["title"] = view.Guide.Settings.Title.Value,
        ["language"] = view.Guide.Settings.Language.Value,
        ["direction"] = view.Words.Culture.TextInfo.IsRightToLeft ? "rtl" : "ltr",
        ["vehicle"] = view.Guide.Vehicle.Name.Value,
        ["years"] = view.Guide.Vehicle.Years.Value.ToString(),
    };
}
