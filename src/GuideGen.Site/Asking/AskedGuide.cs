using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Site.Drafting;
using GuideGen.Site.Planning;
using GuideGen.Site.Trees;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Asking;

/// <summary>
/// A guide as one file of its site asks it. Whatever can change without <see cref="SitePlan.Common"/> is noted as it is given, so that
/// the file is made again only when something has changed that it shows.
/// </summary>
public sealed class AskedGuide
{
    readonly SitePlan plan;
    readonly AskedItems? asked;

    /// <param name="asked">Takes down what is asked for; null if nobody wants to know, and for many threads.</param>
    internal AskedGuide(SitePlan plan, AskedItems? asked)
    {
        (this.plan, this.asked) = (plan, asked);
        Relations = new(plan.Relations, asked);
        Evidence = new(plan.Evidence, asked);
        Faults = new(plan.Guide.Faults, ContentKind.Fault, asked);
        Checks = new(plan.Guide.Checks, ContentKind.Check, asked);
        Symptoms = new(plan.Guide.Symptoms, ContentKind.Symptom, asked);
        Parts = new(plan.Guide.Parts, ContentKind.Part, asked);
        Tasks = new(plan.Guide.Tasks, ContentKind.Task, asked);
        Codes = new(plan.Guide.Codes, ContentKind.Code, asked);
        Trees = new(plan.Guide.Trees, ContentKind.Tree, asked);
    }

    public SiteSettings Settings => plan.Guide.Settings;

    public Vehicle Vehicle => plan.Guide.Vehicle;

    public FrozenDictionary<string, Hazard> Hazards => plan.Guide.Hazards;

    public ImmutableArray<KeyValuePair<Located<string>, Term>> Terms => plan.Guide.Terms;

    /// <inheritdoc cref="SitePlan.Terms"/>
    public PhraseFinder<string> TermFinder => plan.Terms;

    /// <inheritdoc cref="GuideContent.Editions"/>
    public ImmutableArray<string> Editions => plan.Guide.Editions;

    /// <inheritdoc cref="SitePlan.Folder"/>
    public string Folder => plan.Folder;

    /// <inheritdoc cref="SitePlan.HasFeed"/>
    public bool HasFeed => plan.HasFeed;

    /// <inheritdoc cref="SitePlan.Codes"/>
    public ImmutableArray<TroubleCode> AllCodes => plan.Codes;

    /// <inheritdoc cref="SitePlan.Groups"/>
    public ImmutableArray<CodeGroup> CodeGroups => plan.Groups;

    /// <summary>How many cases there are.</summary>
    public int CaseCount => plan.Guide.Cases.Length;

    public AskedShelf<Fault> Faults { get; }

    public AskedShelf<Check> Checks { get; }

    public AskedShelf<Symptom> Symptoms { get; }

    public AskedShelf<Part> Parts { get; }

    public AskedShelf<HowTo> Tasks { get; }

    public AskedShelf<CodePage> Codes { get; }

    public AskedShelf<Tree> Trees { get; }

    public AskedRelations Relations { get; }

    public AskedEvidence Evidence { get; }

    public GuideWeights Weights
    {
        get
        {
            asked?.Note(GuideItem.Weights);
            return plan.Weights;
        }
    }

    /// <summary>For what goes from tree to tree by itself.</summary>
    public Shelf<Tree> AllTrees
    {
        get
        {
            asked?.Note(GuideItem.All(ContentKind.Tree));
            return plan.Guide.Trees;
        }
    }

    /// <inheritdoc cref="TreeFigures.Of"/>
    public ImmutableArray<TreeFigure> FiguresOf(Tree tree)
    {
        asked?.Note(GuideItem.FiguresOfTree + tree.Origin.Slug);
        return plan.Figures.Of(tree);
    }

    /// <inheritdoc cref="NamesToUse.Of(Outline, GuideContent)"/>
    internal IEnumerable<NamesToUse> NamesFor(Outline outline) => NamesToUse.Of(outline, plan.Guide);
}
