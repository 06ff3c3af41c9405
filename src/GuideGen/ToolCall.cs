namespace GuideGen;

/// <summary>Finds out by which words a person can call the tool again.</summary>
public static class ToolCall
{
    /// <summary>Set by the scripts that run the tool out of its repository: how they were called themselves.</summary>
    public const string Variable = "GUIDEGEN_CALL";

    /// <param name="script">What the variable holds; null or empty if no script called the tool.</param>
    /// <param name="process">The running program.</param>
    /// <param name="program">The tool's own assembly.</param>
    public static string Of(string? script, string? process, string program)
    {
        if (!string.IsNullOrWhiteSpace(script)) return Quoted(script);
        return Path.GetFileNameWithoutExtension(process) is "dotnet" ? "dotnet " + Quoted(program) : Quoted(process ?? "guidegen");
    }

    static string Quoted(string path) => path.Any(char.IsWhiteSpace) ? $"\"{path}\"" : path;
}
