using System.Globalization;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Findings;

/// <summary>What can be wrong with a guide: one row of the rule book.</summary>
/// <param name="Id">Stable, lower case with hyphens; authors write it in dismissals and settings.</param>
/// <param name="Severity">How much it weighs unless the finding says otherwise.</param>
/// <param name="Title">What it is about, in a few words.</param>
/// <param name="Message">What is wrong, with numbered places for the facts of the case.</param>
/// <param name="Hint">What to do about it, with the same places; empty where the message says it all.</param>
public sealed record Rule(string Id, Severity Severity, string Title, string Message, string Hint)
{
    /// <summary>True where the author may know better: such a finding can be dismissed on its page, with a reason.</summary>
    public bool CanBeDismissed { get; init; }

    /// <summary>True where the finding is about somebody getting hurt: no setting makes it less than a warning.</summary>
    public bool IsAboutSafety { get; init; }

    /// <summary>True where the finding compares several pages, so that an error on one of them may make or hide it.</summary>
    public bool IsAcrossPages { get; init; }

    /// <summary>True where a finding that concerns a grave hazard is an error, so that the site is not written.</summary>
    public bool IsErrorIfGrave { get; init; }

    /// <param name="span">Where the author has to look.</param>
    /// <param name="facts">Fill the places of message and hint, in order.</param>
    public Finding At(SourceSpan span, params string[] facts) => new(
        this,
        Severity,
        span,
        string.Format(CultureInfo.InvariantCulture, Message, facts),
        string.Format(CultureInfo.InvariantCulture, Hint, facts));
}
