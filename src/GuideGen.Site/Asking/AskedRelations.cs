using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Asking;

/// <summary>What hangs together, as one file asks for it; with the entries it is given it has asked for them as well.</summary>
public sealed class AskedRelations
{
    readonly Relations relations;
    readonly AskedItems? asked;

    internal AskedRelations(Relations relations, AskedItems? asked) => (this.relations, this.asked) = (relations, asked);

    /// <inheritdoc cref="Relations.FaultsByCode"/>
    public IEnumerable<LikelyFault> FaultsByCode(TroubleCode code) => Asked(relations.FaultsByCode, GuideItem.FaultsByCode, code);

    /// <inheritdoc cref="Relations.FaultsByCode"/>
    public IEnumerable<LikelyFault> FaultsBySymptom(string slug) => Asked(relations.FaultsBySymptom, GuideItem.FaultsBySymptom, slug);

    public IEnumerable<Fault> FaultsByPart(string slug) => Asked(relations.FaultsByPart, GuideItem.FaultsByPart, slug);

    public IEnumerable<Fault> FaultsByCheck(string slug) => Asked(relations.FaultsByCheck, GuideItem.FaultsByCheck, slug);

    public IEnumerable<Check> ChecksByPart(string slug) => Asked(relations.ChecksByPart, GuideItem.ChecksByPart, slug);

    public IEnumerable<Tree> TreesBySymptom(string slug) => Asked(relations.TreesBySymptom, GuideItem.TreesBySymptom, slug);

    public IEnumerable<Tree> TreesByCheck(string slug) => Asked(relations.TreesByCheck, GuideItem.TreesByCheck, slug);

    public IEnumerable<Tree> TreesByFault(string slug) => Asked(relations.TreesByFault, GuideItem.TreesByFault, slug);

    /// <inheritdoc cref="Relations.CasesByFault"/>
    public IEnumerable<SolvedCase> CasesByFault(string slug) => Asked(relations.CasesByFault, GuideItem.CasesByFault, slug);

    IEnumerable<T> Asked<TKey, T>(ILookup<TKey, T> relation, string kind, TKey key)
    {
        asked?.Note(kind + key);
        return relation[key];
    }
}
