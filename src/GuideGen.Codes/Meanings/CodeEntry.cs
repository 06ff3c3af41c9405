using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <summary>What a standard code is about, as structure: from it every wording is made.</summary>
/// <param name="Subject">The words of the subject with "[]" where a side stands inside them: "[] wheel speed sensor []".</param>
/// <param name="Sides">First those that stand inside the subject, in that order, then those that follow it.</param>
/// <param name="InCircuit">The code speaks of the wiring and what is measured on it, not of the part or the quantity.</param>
/// <param name="Support">How many of three unrelated lists carry the code; always weak in blocks B0 and C0.</param>
public sealed record CodeEntry(
    TroubleCode Code, string Subject, ImmutableArray<Side> Sides, bool InCircuit, ConditionInfo Condition, Support Support)
{
    /// <summary>In English: "Vehicle speed sensor A: circuit reads low".</summary>
    public string Meaning => MeaningGrammar.Word(this, EnglishWords.Instance);

    /// <summary>What the reader has to know before trusting the meaning; mostly empty.</summary>
    public ImmutableArray<string> Notes => CodeNotes.For(this);

    /// <summary>What can hurt when working on this subject, then what the condition's own checks ask for.</summary>
    public ImmutableArray<string> Cautions => [.. SubjectCautions.For(this), .. Condition.Cautions];

    public RelatedCodes Related => CodeCatalogue.RelatedTo(this);
}
