namespace GuideGen.Guide.Findings;

/// <summary>How much a finding weighs: an error keeps the site from being written.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}
