using System.Collections.Immutable;

namespace GuideGen.Guide.Model;

/// <summary>What can hurt somebody at a step: the hazards of its check and of all preparation, which is part of doing it.</summary>
public static class TreeHazards
{
    /// <returns>Slugs, in the order of the check and its preparation; preparation that nobody knows adds none.</returns>
    public static IEnumerable<string> Of(GuideContent guide, DoNode step, Check check) =>
        check.Hazards.Concat(step.Needs.SetupOf(check).SelectMany(s => Preparation(guide, s.Value))).Select(h => h.Value).Distinct();

    static ImmutableArray<Text.Located<string>> Preparation(GuideContent guide, string setup) =>
        guide.Vehicle.Setups.FirstOrDefault(s => s.Key.Value == setup).Value?.Hazards ?? [];
}
