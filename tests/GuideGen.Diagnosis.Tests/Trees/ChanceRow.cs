using GuideGen.Diagnosis.Trees;

namespace GuideGen.Diagnosis.Tests.Trees;

static class ChanceRow
{
    /// <summary>A row with places of its own.</summary>
    public static CauseChances Of(params (string Cause, double Chance)[] chances) =>
        new(chances.Select((c, i) => (c.Cause, i)).ToDictionary(c => c.Cause, c => c.i), [.. chances.Select(c => c.Chance)]);
}
