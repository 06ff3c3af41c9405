using System.Collections.Immutable;

namespace GuideGen.Guide.Model;

/// <summary>What can hurt somebody at a step: the hazards of its check and of all preparation, which is part of doing it.</summary>
public static class TreeHazards
{
    /// <returns>Slugs, in the order of the check and its preparation; preparation that nobody knows adds none.</returns>
    public static IEnumerable<string> Of(Vehicle vehicle, DoNode step, Check check) =>
        check.Hazards.Concat(step.Needs.SetupOf(check).SelectMany(s => Preparation(vehicle, s.Value))).Select(h => h.Value).Distinct();

    static ImmutableArray<Text.Located<string>> Preparation(Vehicle vehicle, string setup) =>
        vehicle.Setups.FirstOrDefault(s => s.Key.Value == setup).Value?.Hazards ?? [];
}
