namespace GuideGen.Guide.Findings;

/// <summary>How much a finding weighs: an error keeps the site from being written.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

public static class SeverityWords
{
    /// <summary>As it stands in printed findings, in both formats.</summary>
    public static string Key(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Warning => "warning",
        Severity.Error => "error",
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };
}
