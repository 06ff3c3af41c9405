namespace GuideGen.Diagnosis.Proof;

/// <summary>One thing that a level asks for.</summary>
public enum ProofNeed
{
    ShownBefore,
    OneChange,
    Cleared,

    /// <summary>The monitor passed in at least three driving cycles, as the lamp rule has it.</summary>
    ThreeMonitorPasses,

    /// <summary>Read after the repair: no pending, permanent or returned code.</summary>
    NoCodes,
    SymptomGone,

    /// <summary>30 days or 1,000 km (common practice, no standard).</summary>
    FollowUp,

    /// <summary>For a fault that comes and goes: as many quiet cycles as chance would hardly give.</summary>
    QuietCycles,

    /// <summary>A defect measured on the removed part, or the fault back with the old part.</summary>
    IndependentEvidence,

    /// <summary>The monitor passed once and no code returned, or the symptom has been gone for 30 days.</summary>
    SomeVerification,
}
