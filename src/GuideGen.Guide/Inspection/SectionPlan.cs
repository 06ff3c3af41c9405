using System.Collections.Immutable;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>A section that pages of a kind have.</summary>
/// <param name="IsHandsOn">Somebody puts a hand to the vehicle here.</param>
public sealed record PlannedSection(string Title, bool IsHandsOn = false);

/// <summary>Which sections a page of each kind has, in the order owners expect.</summary>
public static class SectionPlan
{
    public const string Safety = "Safety";

    public static ImmutableArray<PlannedSection> Of(ContentKind kind) => kind switch
    {
        ContentKind.Fault => [new(Safety), new("What happens"), new("Confirm it", true), new("Put it right", true), new("Prove it")],
        ContentKind.Check => [new(Safety), new("Do it", true), new("What it tells you")],
        ContentKind.Task => [new(Safety), new("Do it", true)],
        ContentKind.Symptom => [new("What you notice"), new("May I drive?")],
        ContentKind.Part => [new("Where it sits"), new("What it does"), new("How it fails")],
        _ => [],
    };
}
