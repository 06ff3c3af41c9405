using System.Collections.Immutable;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>A section that pages of a kind have.</summary>
/// <param name="Help">What to write there, for its author.</param>
/// <param name="IsHandsOn">Somebody puts a hand to the vehicle here.</param>
public sealed record PlannedSection(string Title, string Help, bool IsHandsOn = false);

/// <summary>Which sections a page of each kind has, in the order owners expect.</summary>
public static class SectionPlan
{
    public const string Safety = "Safety";

    const string CanHurt = "Say what can hurt someone in this job, and how to avoid it. If nothing can, say so in words.";

    public static ImmutableArray<PlannedSection> Of(ContentKind kind) => kind switch
    {
        ContentKind.Fault =>
        [
            new(Safety, CanHurt),
            new("What happens", "Say what fails, why it fails on this vehicle, and what the driver notices."),
            new("Confirm it", "Say how to make sure before anything is bought, with the limits of each reading.", true),
            new("Put it right", "Give the steps by number, and say when to stop and hand over.", true),
            new("Prove it", "Say what has to be seen, and for how long, before the fault counts as gone."),
        ],
        ContentKind.Check =>
        [
            new(Safety, CanHurt),
            new("Do it", "Give the steps by number.", true),
            new("What it tells you", "Say what each outcome means, and what it does not mean."),
        ],
        ContentKind.Task => [new(Safety, CanHurt), new("Do it", "Give the steps by number.", true)],
        ContentKind.Symptom =>
        [
            new("What you notice", "Describe it as an owner would, and tell it apart from what feels alike."),
            new("May I drive?", "Say whether one may drive on before the cause is known, and how far."),
        ],
        ContentKind.Part =>
        [
            new("Where it sits", "Say how to find it, and what is in the way."),
            new("What it does", "Say in two sentences what it is for."),
            new("How it fails", "Say how it wears or breaks, and how that shows."),
        ],
        _ => [],
    };
}
