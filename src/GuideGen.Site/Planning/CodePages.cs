using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Codes;
using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;

namespace GuideGen.Site.Planning;

/// <summary>What a guide has about some codes, as its site has it, without making a plan of the whole site.</summary>
public sealed class CodePages
{
    readonly GuideContent guide;
    readonly Relations relations;
    readonly FrozenSet<TroubleCode> withPage;

    CodePages(ImmutableArray<GuideContent> editions)
    {
        guide = editions[0];
        relations = new Relations(guide, c => CaseProofs.Of(c, guide.Vehicle.DistanceUnit.Value).Level.Counts());
        withPage = [.. editions.SelectMany(CodeUses.All)];
    }

    /// <summary>Reads only what can name one of the codes.</summary>
    public static CodePages Of(IGuideFiles files, IEnumerable<TroubleCode> codes)
    {
        var naming = new NamingFiles(files, codes);
        var first = GuideLoader.Load(naming).Guide;
        return new CodePages([first, .. first.Editions.Skip(1).Select(language => GuideLoader.LoadIn(naming, language).Guide)]);
    }

    /// <summary>The guide's own words for one of the codes, in the language it was written in; null if it has none.</summary>
    public string? MeaningOf(TroubleCode code) => guide.Codes.Find(code.ToString())?.Meaning.Value;

    /// <returns>Addresses in the site: the code's own page, if the guide names one of the codes, and those of the faults that set it, in order of evidence.</returns>
    public IEnumerable<string> AddressesOf(TroubleCode code) =>
        [.. withPage.Contains(code) ? [Addresses.Of(code)] : Array.Empty<string>(), .. relations.FaultsByCode[code].Select(f => Addresses.Of(f.Fault))];
}
