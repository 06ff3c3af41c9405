using GuideGen.Codes;
using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Asking;

/// <summary>What the cases say, as one file asks for it.</summary>
public sealed class AskedEvidence
{
    readonly GuideEvidence evidence;
    readonly AskedItems? asked;

    internal AskedEvidence(GuideEvidence evidence, AskedItems? asked) => (this.evidence, this.asked) = (evidence, asked);

    /// <inheritdoc cref="GuideEvidence.Of(TroubleCode)"/>
    public SignEvidence? Of(TroubleCode code)
    {
        asked?.Note(GuideItem.EvidenceOfCode + code);
        return evidence.Of(code);
    }

    /// <inheritdoc cref="GuideEvidence.OfSymptom"/>
    public SignEvidence? OfSymptom(string slug)
    {
        asked?.Note(GuideItem.EvidenceOfSymptom + slug);
        return evidence.OfSymptom(slug);
    }

    /// <summary>By the cases alone that found the fault.</summary>
    public FaultEvidence Of(Fault fault)
    {
        asked?.Note(GuideItem.CasesByFault + fault.Origin.Slug);
        return evidence.Of(fault);
    }

    /// <summary>Who has the case has all that its level follows from.</summary>
    public ProofLevel LevelOf(SolvedCase solved) => evidence.LevelOf(solved);
}
