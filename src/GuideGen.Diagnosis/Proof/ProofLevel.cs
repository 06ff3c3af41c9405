namespace GuideGen.Diagnosis.Proof;

/// <summary>How well a case is proved. Only the two highest count as cases of their cause.</summary>
public enum ProofLevel
{
    /// <summary>The code or the symptom is back: it was something else.</summary>
    Refuted = 0,

    /// <summary>'Fixed it', nothing checked.</summary>
    Claimed = 1,

    /// <summary>The monitor passed once, or the symptom has been gone for 30 days, or several things were changed.</summary>
    Probable = 2,

    Confirmed = 3,

    Proved = 4,
}

public static class ProofLevels
{
    /// <summary>Whether a case of this level counts in a share; the others are shown apart.</summary>
    public static bool Counts(this ProofLevel level) => level >= ProofLevel.Confirmed;
}
