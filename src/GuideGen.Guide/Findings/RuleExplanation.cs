using System.Collections.Immutable;

namespace GuideGen.Guide.Findings;

/// <summary>Why a rule is there, and how it looks to break and to keep it.</summary>
/// <param name="Group">What the rule is about, as the heading of its file says.</param>
public sealed record RuleExplanation(string Id, string Group, string Why, ImmutableArray<RuleExample> Bad, ImmutableArray<RuleExample> Good);

/// <summary>How a piece of a file is meant.</summary>
public enum ExampleForm
{
    /// <summary>Lines of the file as it should stand.</summary>
    Lines,

    /// <summary>Lines that begin with a hyphen give way to those with a plus.</summary>
    Change,

    /// <summary>The whole file.</summary>
    Whole,

    /// <summary>The file is not there.</summary>
    Removed,

    /// <summary>Words about a file that cannot be shown as text.</summary>
    Told,
}

/// <summary>A piece of a file of a small guide.</summary>
/// <param name="Text">As it stands in the explanation.</param>
public sealed record RuleExample(string Path, ExampleForm Form, string Text)
{
    /// <summary>What a reader is shown: the lines that an author would write.</summary>
    public string Shown => Form switch
    {
        ExampleForm.Change => string.Join('\n', Text.Split('\n').Where(l => l.StartsWith('+')).Select(l => l.Length > 2 ? l[2..] : "")),
        ExampleForm.Removed => "(no such file)",
        _ => Text,
    };
}
