using System.Text.Encodings.Web;
using System.Text.Json;
using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Publishing;

/// <summary>The guide for other programs: its vehicle, its pages, and which fault shows which code and symptom how often.</summary>
/// <remarks>Addresses are relative to the site's root; likelihoods are numbers from 0 to 1; money is in the guide's currency.</remarks>
static class GuideJson
{
    public const string Address = "guide.json";

    /// <summary>Rises when a field changes its meaning or goes; new fields do not count.</summary>
    const int Format = 1;

    // A file of its own, never part of a page, so that letters may stay as they are.
    static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static SiteFile Of(SitePlan plan) => new(Address, () =>
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            WriteHead(json, plan.Guide);
            WriteArray(json, "pages", plan.Guide.Entries, entry => WritePage(json, entry));
            WriteArray(json, "faults", plan.Guide.Faults.All, fault => WriteFault(json, fault));
            WriteArray(json, "codes", plan.Codes, code =>
            {
                json.WriteString("code", code.ToString());
                json.WriteString("address", Addresses.Of(code));
            });
            json.WriteEndObject();
        }

        return [.. stream.ToArray(), (byte)'\n'];
    });

    static void WriteHead(Utf8JsonWriter json, GuideContent guide)
    {
        json.WriteNumber("format", Format);
        json.WriteString("title", guide.Settings.Title.Value);
        json.WriteString("summary", guide.Settings.Summary.Value);
        json.WriteString("language", guide.Settings.Language.Value);
        json.WriteString("base", guide.Settings.Base?.Value.AbsoluteUri);
        json.WriteStartObject("vehicle");
        json.WriteString("name", guide.Vehicle.Name.Value);
        json.WriteString("currency", guide.Vehicle.Currency.Value);
        WriteArray(json, "variants", guide.Vehicle.Variants, variant =>
        {
            json.WriteString("key", variant.Key.Value);
            json.WriteString("name", variant.Value.Name.Value);
            json.WriteNumber("firstYear", variant.Value.Years.Value.First);
            json.WriteNumber("lastYear", variant.Value.Years.Value.Last);
        });
        json.WriteEndObject();
    }

    static void WritePage(Utf8JsonWriter json, IGuideEntry entry)
    {
        json.WriteString("kind", NameKinds.Word(entry.Origin.Kind!.Value));
        json.WriteString("key", entry.Origin.Slug);
        json.WriteString("address", Addresses.Of(entry));
        json.WriteString("name", entry.Name.Value);
        json.WriteString("summary", entry.Summary.Value);
        json.WriteString("reviewed", PageFacts.ReviewedOf(entry) is { } day ? PageFacts.Iso(day) : null);
        WriteTexts(json, "variants", entry.Variants.Select(v => v.Value));
    }

    static void WriteFault(Utf8JsonWriter json, Fault fault)
    {
        json.WriteString("key", fault.Origin.Slug);
        json.WriteString("system", fault.System.Value);
        json.WriteString("drive", DriveWords.Key(fault.Drive.Value));
        json.WriteNumber("belief", fault.Belief.Value);
        WriteLikelihoods(json, "codes", fault.Codes.Select(c => (c.Key.Value.ToString(), c.Value.Value.Value)));
        WriteLikelihoods(json, "symptoms", fault.Symptoms.Select(s => (s.Key.Value, s.Value.Value.Value)));
        WriteTexts(json, "checks", fault.Checks.Select(c => c.Value));
        WriteTexts(json, "parts", fault.Parts.Select(p => p.Value));
        json.WriteNumber("ownHours", fault.Repair.OwnHours.Value);
        json.WriteNumber("workshopHours", fault.Repair.WorkshopHours.Value);
        json.WriteNumber("materialsLow", fault.Repair.Materials.Low);
        json.WriteNumber("materialsHigh", fault.Repair.Materials.High);
    }

    static void WriteLikelihoods(Utf8JsonWriter json, string name, IEnumerable<(string Key, double Value)> all)
    {
        json.WriteStartObject(name);
        foreach (var (key, value) in all) json.WriteNumber(key, value);
        json.WriteEndObject();
    }

    static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    static void WriteArray<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
