namespace GuideGen.Diagnosis.Proof;

/// <summary>What the code memory said after the repair.</summary>
public enum CodesAfter
{
    /// <summary>Nobody looked, or the case does not say.</summary>
    Unread,

    /// <summary>Read, and no code of this fault in it.</summary>
    None,

    /// <summary>The fault was seen again, in one driving cycle so far.</summary>
    Pending,

    /// <summary>A code that only the vehicle's own monitor may erase is still stored.</summary>
    Permanent,

    /// <summary>The code came back.</summary>
    Back,
}

/// <summary>What was found on the removed part.</summary>
public enum PartEvidence
{
    None,

    /// <summary>The defect was measured or seen on the removed part.</summary>
    Measured,

    /// <summary>The fault came back with the old part, or by moving it.</summary>
    SwappedBack,
}

/// <summary>What a case states about its proof: facts, never a level. A null or a default is 'not stated'.</summary>
public sealed record ProofFacts
{
    /// <summary>False for a fault that set no code; what concerns codes and monitors is then not asked for.</summary>
    public bool HadCode { get; init; } = true;

    /// <summary>A check showed the fault before the repair.</summary>
    public bool ShownBefore { get; init; }

    /// <summary>Only one thing was changed.</summary>
    public bool OneChange { get; init; }

    /// <summary>The codes were cleared after the repair.</summary>
    public bool Cleared { get; init; }

    /// <summary>
    /// Driving cycles since then, in the conditions under which the code was set, in which the monitor that set it
    /// ran to its end and passed.
    /// </summary>
    public int MonitorPasses { get; init; }

    public CodesAfter CodesAfter { get; init; }

    /// <summary>False when the symptom is still or again there.</summary>
    public bool? SymptomGone { get; init; }

    public int FollowUpDays { get; init; }

    public double FollowUpKilometres { get; init; }

    /// <summary>For a fault that comes and goes: the share of driving cycles in which it used to show, 0 to 1.</summary>
    public double? Recurrence { get; init; }

    /// <summary>Driving cycles since the repair without the fault, where counted; asked for only with a recurrence.</summary>
    public int CyclesSince { get; init; }

    public PartEvidence Evidence { get; init; }
}
