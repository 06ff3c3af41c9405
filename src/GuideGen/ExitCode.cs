namespace GuideGen;

/// <summary>What the shell is told.</summary>
public static class ExitCode
{
    public const int Good = 0;

    /// <summary>Findings of severity error, or nothing found where something was looked for.</summary>
    public const int Findings = 1;

    public const int WrongUsage = 2;

    public const int NoAccess = 3;
}
