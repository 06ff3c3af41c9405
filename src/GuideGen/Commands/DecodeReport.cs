using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using GuideGen.Codes;
using GuideGen.Codes.Reading;
using GuideGen.Site.Planning;

namespace GuideGen.Commands;

/// <summary>What was read from a text: as lines for people, or as an array for programs.</summary>
/// <param name="pages">Of the guide at hand; null if there is none.</param>
sealed class DecodeReport(CodeReading reading, CodePages? pages)
{
    // The output is read by programs and terminals, never put into a page, so that letters may stay as they are.
    static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    public void WriteText(TextWriter output)
    {
        foreach (var find in reading.Finds)
        {
            output.WriteLine($"{find.Reported}  {MeaningOf(find.Code)}");
            foreach (var line in Lines(find)) output.WriteLine("    " + line);
        }

        foreach (var note in reading.Answers.Select(a => a.Note).OfType<string>().Distinct()) output.WriteLine(note);
        if (reading.Finds.IsEmpty && reading.Answers.IsEmpty) output.WriteLine("No code was found. A code is a letter P, C, B or U and four characters, such as P0299.");
        else if (reading.Finds.IsEmpty && reading.Answers.All(a => a.Refusal is null)) output.WriteLine("A whole answer, with no code in it.");
    }

    public void WriteJson(TextWriter output)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartArray();
            foreach (var find in reading.Finds) Write(json, find);
            json.WriteEndArray();
        }

        output.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }

    IEnumerable<string> Lines(CodeFind find)
    {
        yield return $"{Word(find.Certainty)}, written '{find.Written}'; {OwnerWords(find.Code.Owner)}; {find.Code.Area.Name}";
        if (find.Reported.FailureType is { } type) yield return $"failure type {type:X2}: {FailureTypes.Describe(type)}";
        if (find.Reported.Status is { } status) yield return $"status {status.Value:X2}: {status.Summary}";
        if (find.Status != StatusWords.None) yield return "reported as " + string.Join(", ", StatusNames(find.Status));
        if (CodeCatalogue.FindStandard(find.Code) is { } entry)
        {
            yield return entry.Condition.Saw;
            foreach (var note in entry.Notes) yield return note;
        }

        foreach (var page in PagesOf(find.Code)) yield return page;
    }

    void Write(Utf8JsonWriter json, CodeFind find)
    {
        var entry = CodeCatalogue.FindStandard(find.Code);
        json.WriteStartObject();
        json.WriteString("code", find.Code.ToString());
        json.WriteString("certainty", Word(find.Certainty));
        json.WriteString("written", find.Written);
        json.WriteBoolean("repaired", find.Certainty == Certainty.Repaired);
        json.WriteString("owner", OwnerKey(find.Code.Owner));
        json.WriteString("area", find.Code.Area.Key);
        json.WriteString("bytes", $"{find.Code.High:X2} {find.Code.Low:X2}");
        WriteFailureType(json, find.Reported.FailureType);
        WriteStatus(json, find);
        json.WriteString("meaning", MeaningOf(find.Code));
        json.WriteString("condition", entry?.Condition.Key);
        json.WriteString("support", entry is null ? null : Word(entry.Support));
        json.WriteStartArray("pages");
        foreach (var page in PagesOf(find.Code)) json.WriteStringValue(page);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void WriteFailureType(Utf8JsonWriter json, byte? type)
    {
        if (type is not { } value)
        {
            json.WriteNull("failureType");
            return;
        }

        json.WriteStartObject("failureType");
        json.WriteString("byte", value.ToString("X2", CultureInfo.InvariantCulture));
        json.WriteString("meaning", FailureTypes.Describe(value));
        json.WriteEndObject();
    }

    static void WriteStatus(Utf8JsonWriter json, CodeFind find)
    {
        json.WriteStartObject("status");
        json.WriteString("byte", find.Reported.Status?.Value.ToString("X2", CultureInfo.InvariantCulture));
        json.WriteStartArray("words");
        foreach (var word in find.Reported.Status?.Words ?? []) json.WriteStringValue(word);
        foreach (var word in StatusNames(find.Status)) json.WriteStringValue(word);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    string? MeaningOf(TroubleCode code) =>
        pages?.MeaningOf(code) ?? CodeCatalogue.FindStandard(code)?.Meaning ?? (code.IsEmptySlot ? "no code stored" : "valid, but no meaning is known");

    IEnumerable<string> PagesOf(TroubleCode code) => pages?.AddressesOf(code) ?? [];

    static IEnumerable<string> StatusNames(StatusWords status) =>
        Enum.GetValues<StatusWords>().Where(w => w != StatusWords.None && status.HasFlag(w)).Select(w => w == StatusWords.LampOn ? "lamp on" : Word(w));

    static string OwnerKey(CodeOwner owner) => owner == CodeOwner.IsoSae ? "standard" : Word(owner);

    static string OwnerWords(CodeOwner owner) => owner switch
    {
        CodeOwner.IsoSae => "standard code",
        CodeOwner.Maker => "the maker's own code",
        CodeOwner.Reserved => "a range the standard keeps back",
        _ => throw new ArgumentOutOfRangeException(nameof(owner)),
    };

    static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
