using System.Text.Json;
using GuideGen.Guide.Model;
using GuideGen.Site.Publishing;

namespace GuideGen.Site.Rendering;

/// <summary>What a device needs to put the guide on its home screen (W3C Web Application Manifest).</summary>
static class WebManifest
{
    public const string Address = "site.webmanifest";

    public static SiteFile Of(GuideContent guide, AssetNames assets) => new(Address, () => Write(guide, assets));

    static byte[] Write(GuideContent guide, AssetNames assets)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("name", guide.Settings.Title.Value);
            json.WriteString("short_name", guide.Vehicle.Name.Value);
            json.WriteString("lang", guide.Settings.Language.Value);
            json.WriteString("start_url", "./index.html");
            json.WriteString("display", "standalone");
            json.WriteString("background_color", "#e9ecee");
            json.WriteString("theme_color", "#14181b");
            json.WriteStartArray("icons");
            json.WriteStartObject();
            json.WriteString("src", assets["icon.svg"]);
            json.WriteString("sizes", "any");
            json.WriteString("type", "image/svg+xml");
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return stream.ToArray();
    }
}
