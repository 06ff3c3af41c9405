namespace GuideGen.Guide.Model;

/// <summary>When an entry of any kind was last read through, and where it stood before.</summary>
public static class Provenances
{
    static Provenance None { get; } = new(null, [], []);

    /// <summary>Nothing for kinds that have none: codes and trees.</summary>
    public static Provenance Of(IGuideEntry entry) => entry switch
    {
        Fault fault => fault.Provenance,
        Symptom symptom => symptom.Provenance,
        Check check => check.Provenance,
        Part part => part.Provenance,
        HowTo task => task.Provenance,
        _ => None,
    };
}
