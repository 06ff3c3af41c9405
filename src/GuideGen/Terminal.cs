using Spectre.Console;

namespace GuideGen;

/// <summary>Where the command line speaks to: words for people on one side, errors on the other; colour only on a terminal.</summary>
/// <param name="Progress">Shows what is being done on a terminal; silent when piped.</param>
public sealed record Terminal(TextReader In, TextWriter Out, TextWriter Error, IAnsiConsole Progress, bool IsPiped)
{
    /// <summary>How the tool was called, so that the commands it proposes work as they stand.</summary>
    public string Call { get; init; } = "guidegen";

    public TimeProvider Clock { get; init; } = TimeProvider.System;

    public DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    public static Terminal Of(TextReader input, TextWriter output, TextWriter error, bool isPiped)
    {
        var settings = new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(isPiped ? TextWriter.Null : output),
            Ansi = isPiped ? AnsiSupport.No : AnsiSupport.Detect,
            Interactive = isPiped ? InteractionSupport.No : InteractionSupport.Detect,
        };
        return new Terminal(input, output, error, AnsiConsole.Create(settings), isPiped);
    }
}
