using System.CommandLine;

namespace GuideGen.Commands;

/// <summary>The option --format of commands whose output another program may read.</summary>
static class OutputFormat
{
    public const string Text = "text";

    public const string Json = "json";

    public static Option<string> Option()
    {
        var option = new Option<string>("--format") { Description = "text for people, json for programs.", HelpName = "text|json", DefaultValueFactory = _ => Text };
        option.AcceptOnlyFromAmong(Text, Json);
        return option;
    }
}
