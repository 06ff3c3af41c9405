using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Globalization;
using GuideGen.Codes;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Asking;

/// <summary>The digest of each item of a guide: while it is the same, and so is <see cref="SitePlan.Common"/>, the item is.</summary>
sealed class ItemDigests
{
    readonly SitePlan plan;
    readonly FrozenDictionary<string, Func<string, Digest>>.AlternateLookup<ReadOnlySpan<char>> kinds;
    readonly ConcurrentDictionary<string, Digest>.AlternateLookup<ReadOnlySpan<char>> known = new ConcurrentDictionary<string, Digest>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <param name="memory">Of earlier compiles of the guide: what takes long to work out is not worked out again to see that it is the same.</param>
    public ItemDigests(SitePlan plan, GuideMemory memory)
    {
        this.plan = plan;
        var figures = new Lazy<Digest>(plan.Figures.Origin);
        var (guide, relations) = (plan.Guide, plan.Relations);
        var byKind = new Dictionary<string, Func<string, Digest>>
        {
            [GuideItem.All(ContentKind.Fault)] = slug => OfEntries(guide.Faults, slug),
            [GuideItem.All(ContentKind.Symptom)] = slug => OfEntries(guide.Symptoms, slug),
            [GuideItem.All(ContentKind.Check)] = slug => OfEntries(guide.Checks, slug),
            [GuideItem.All(ContentKind.Part)] = slug => OfEntries(guide.Parts, slug),
            [GuideItem.All(ContentKind.Task)] = slug => OfEntries(guide.Tasks, slug),
            [GuideItem.All(ContentKind.Code)] = slug => OfEntries(guide.Codes, slug),
            [GuideItem.All(ContentKind.Tree)] = slug => OfEntries(guide.Trees, slug),
            [GuideItem.FaultsByCode] = code => TroubleCode.TryParse(code, out var known) ? OfAll(relations.FaultsByCode[known].Select(f => f.Fault)) : default,
            [GuideItem.FaultsBySymptom] = slug => OfAll(relations.FaultsBySymptom[slug].Select(f => f.Fault)),
            [GuideItem.FaultsByPart] = slug => OfAll(relations.FaultsByPart[slug]),
            [GuideItem.FaultsByCheck] = slug => OfAll(relations.FaultsByCheck[slug]),
            [GuideItem.ChecksByPart] = slug => OfAll(relations.ChecksByPart[slug]),
            [GuideItem.TreesBySymptom] = slug => OfAll(relations.TreesBySymptom[slug]),
            [GuideItem.TreesByCheck] = slug => OfAll(relations.TreesByCheck[slug]),
            [GuideItem.TreesByFault] = slug => OfAll(relations.TreesByFault[slug]),
            [GuideItem.CasesByFault] = slug => OfFiles(relations.CasesByFault[slug].Select(c => c.Origin)),
            [GuideItem.EvidenceOfCode] = code => TroubleCode.TryParse(code, out var known) ? plan.Evidence.DigestOf(known) : default,
            [GuideItem.EvidenceOfSymptom] = plan.Evidence.DigestOfSymptom,
            [GuideItem.FiguresOfTree] = slug => guide.Trees.Find(slug) is { } tree ? Kept(memory, figures.Value, GuideItem.FiguresOfTree + slug, () => OfFigures(tree)) : default,
            [GuideItem.Weights] = _ => plan.Weights.Origin,
        };
        kinds = byKind.ToFrozenDictionary().GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <param name="item">See <see cref="GuideItem"/>; what the guide does not have is an item as well.</param>
    /// <returns>Null for what is no name of an item.</returns>
    public Digest? Of(ReadOnlySpan<char> item)
    {
        if (known.TryGetValue(item, out var digest)) return digest;
        var kind = GuideItem.KindOf(item);
        return kinds.TryGetValue(kind, out var digestOf) ? known[item] = digestOf(item[kind.Length..].ToString()) : null;
    }

    Digest OfEntries<T>(Shelf<T> shelf, string slug)
        where T : class, IGuideEntry
    {
        if (slug.Length == 0) return OfAll(shelf.All);
        return shelf.Find(slug) is { } entry ? Of(entry) : default;
    }

    Digest OfAll(IEnumerable<IGuideEntry> entries)
    {
        using var all = new Digester();
        foreach (var entry in entries) all.Add(Of(entry));
        return all.Take();
    }

    Digest Of(IGuideEntry entry)
    {
        if (entry is not Tree { Computed: not null }) return entry.Origin.Face;
        using var all = new Digester();
        return all.Add(entry.Origin.Face).Add(plan.Weights.Origin).Take();
    }

    Digest OfFigures(Tree tree)
    {
        using var all = new Digester();
        foreach (var figure in plan.Figures.Of(tree)) all.Add(figure.Variant).Add(string.Create(CultureInfo.InvariantCulture, $"{figure.Expected:R} {figure.Worst:R} {figure.Money} {figure.Found:R}"));
        return all.Take();
    }

    /// <param name="origin">Of all that the item follows from.</param>
    static Digest Kept(GuideMemory memory, Digest origin, string item, Func<Digest> digestOf)
    {
        using var key = new Digester();
        return Digest.From(memory.Recall(key.Add(item).Add(origin).Take(), () =>
        {
            var bytes = new byte[Digest.Size];
            digestOf().CopyTo(bytes);
            return bytes;
        }));
    }

    static Digest OfFiles(IEnumerable<PageOrigin> origins)
    {
        using var all = new Digester();
        foreach (var origin in origins) all.Add(origin.Face);
        return all.Take();
    }
}
