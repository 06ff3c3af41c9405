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
    const string Gap = "…";

    /// <summary>What a reader is shown: the lines that an author would write, with a gap where others stand between them.</summary>
    public string Shown => Form switch
    {
        ExampleForm.Change => string.Join('\n', Written(Text.Split('\n'))),
        ExampleForm.Removed => "(no such file)",
        _ => Text,
    };

    static IEnumerable<string> Written(string[] lines)
    {
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith('+')) yield return lines[i].Length > 2 ? lines[i][2..] : "";
            else if (i > 0 && lines[i - 1].StartsWith('+') && lines.Skip(i).Any(l => l.StartsWith('+'))) yield return Gap;
        }
    }
}
