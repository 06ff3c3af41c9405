using System.CommandLine;

namespace GuideGen.Commands;

/// <summary>The option --format of commands whose output another program may read.</summary>
static class OutputFormat
{
    public const string Text = "text";

    public const string Json = "json";

    public const string Sarif = "sarif";

    public const string Annotations = "annotations";

    public static Option<string> Option() => Make("text for people, json for programs.", Text, Json);

    public static Option<string> OfFindings() =>
        Make("text for people, json or sarif (SARIF 2.1.0) for programs, annotations for the log of a build server.", Text, Json, Sarif, Annotations);

    static Option<string> Make(string description, params string[] formats)
    {
        var option = new Option<string>("--format") { Description = description, HelpName = string.Join('|', formats), DefaultValueFactory = _ => Text };
        option.AcceptOnlyFromAmong(formats);
        return option;
    }
}
