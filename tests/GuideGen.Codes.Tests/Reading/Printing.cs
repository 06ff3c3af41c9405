using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Codes.Raw;
using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>Prints what was read in the short form of the rows.</summary>
static class Printing
{
    static readonly (StatusWords Status, string Word)[] Words =
    [
        (StatusWords.Current, "current"), (StatusWords.Pending, "pending"), (StatusWords.Confirmed, "confirmed"), (StatusWords.Stored, "stored"),
        (StatusWords.Permanent, "permanent"), (StatusWords.History, "history"), (StatusWords.Intermittent, "intermittent"), (StatusWords.LampOn, "lamp-on"),
    ];

    static readonly Dictionary<AnswerService, string> Services = new()
    {
        [AnswerService.Stored] = "stored",
        [AnswerService.Pending] = "pending",
        [AnswerService.Permanent] = "permanent",
        [AnswerService.ByStatus] = "by-status",
        [AnswerService.Refused] = "refused",
    };

    public static string Print(this CodeFind find)
    {
        var status = string.Join(", ", Words.Where(w => find.Status.HasFlag(w.Status)).Select(w => w.Word));
        return find.Reported.Print() + find.Certainty.Print() + (status.Length > 0 ? $" [{status}]" : "") + (find.Module is null ? "" : " @" + find.Module);
    }

    public static string Print(this RawAnswer answer)
    {
        var refusal = answer.Refusal is var (service, reason) ? string.Create(CultureInfo.InvariantCulture, $" {service:X2} {reason:X2}") : "";
        var source = answer.Source is null ? "" : " @" + answer.Source;
        var codes = answer.Codes.Print() + (answer.OtherReading.IsEmpty ? "" : " or" + answer.OtherReading.Print());
        return Services[answer.Service] + refusal + source + ":" + codes + answer.Certainty.Print() + (answer.IsComplete ? "" : " incomplete");
    }

    static string Print(this ImmutableArray<RawCode> codes) => string.Concat(codes.Select(c => " " + c.Reported.Print()));

    static string Print(this ReportedCode reported) =>
        reported + (reported.Status is { } status ? string.Create(CultureInfo.InvariantCulture, $":{status.Value:X2}") : "");

    static string Print(this Certainty certainty) => certainty switch { Certainty.Repaired => " repaired", Certainty.Guess => " guess", _ => "" };

    public static string Print(this ScriptPage.Find find) =>
        new ScriptPage.Reported(find.Code, find.FailureType, find.Status).Print() + Print(find.Certainty)
        + (find.Words.Length > 0 ? $" [{string.Join(", ", find.Words)}]" : "") + (find.Module is null ? "" : " @" + find.Module);

    public static string Print(this ScriptPage.Answer answer)
    {
        var refusal = answer.Refusal is [var service, var reason] ? string.Create(CultureInfo.InvariantCulture, $" {service:X2} {reason:X2}") : "";
        var codes = Print(answer.Codes) + (answer.Other.Length > 0 ? " or" + Print(answer.Other) : "");
        return answer.Service + refusal + (answer.Source is null ? "" : " @" + answer.Source) + ":" + codes + Print(answer.Certainty) + (answer.Complete ? "" : " incomplete");
    }

    static string Print(ScriptPage.Reported[] codes) => string.Concat(codes.Select(c => " " + c.Print()));

    static string Print(this ScriptPage.Reported reported) =>
        reported.Code + (reported.FailureType is null ? "" : "-" + reported.FailureType) + (reported.Status is null ? "" : ":" + reported.Status);

    static string Print(string certainty) => certainty == "certain" ? "" : " " + certainty;
}
