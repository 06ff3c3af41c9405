using System.Text;
using System.Text.Json;
using GuideGen.Codes;
using GuideGen.Site.Planning;
using GuideGen.Site.Views;

namespace GuideGen.Site.Rendering;

/// <summary>Data for the client scripts, as script files: from a file nothing may be fetched.</summary>
static class DataScripts
{
    public static IEnumerable<SiteFile> Of(SitePlan plan, Theme theme) =>
    [
        new SiteFile("data/codes.js", () => Script("codes", json => WriteCodes(json, plan, theme))),
        new SiteFile("data/standard-codes.js", () => Script("standardCodes", WriteStandardCodes)),
    ];

    /// <summary>A bit for each of the 65,536 possible codes, set if the standard gives it a meaning: enough to tell a slip from a code.</summary>
    static void WriteStandardCodes(Utf8JsonWriter json)
    {
        var bits = new byte[65_536 / 8];
        foreach (var entry in CodeCatalogue.Standard) bits[entry.Code.Value >> 3] |= (byte)(1 << (entry.Code.Value & 7));
        json.WriteBase64StringValue(bits);
    }

    /// <summary>The writer's default encoder leaves no sign that could end a script.</summary>
    static byte[] Script(string name, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        stream.Write(Encoding.UTF8.GetBytes($"((globalThis.GuideGen ??= {{}}).data ??= {{}}).{name} = "));
        using (var json = new Utf8JsonWriter(stream)) write(json);
        stream.Write(";\n"u8);
        return stream.ToArray();
    }

    static void WriteCodes(Utf8JsonWriter json, SitePlan plan, Theme theme)
    {
        var view = new ViewContext(plan, theme, Addresses.Home);
        json.WriteStartArray();
        foreach (var code in plan.Codes)
        {
            json.WriteStartObject();
            json.WriteString("code", code.ToString());
            json.WriteString("meaning", CodeWords.MeaningOf(view, code));
            json.WriteString("href", view.Links.Of(code));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
