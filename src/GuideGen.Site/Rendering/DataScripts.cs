using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using GuideGen.Codes;
using GuideGen.Site.Planning;
using GuideGen.Site.Searching;
using GuideGen.Site.Views;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>Data for the client scripts, as script files: from a file nothing may be fetched.</summary>
sealed class DataScripts
{
    readonly SitePlan plan;
    readonly Theme theme;
    readonly ViewContext view;

    /// <summary>What takes longest of a large guide, and by one thread for the most part.</summary>
    readonly Task<SearchScripts> search;

    /// <summary>Begins to make the search.</summary>
    /// <param name="recall">See <see cref="SearchScripts.Of"/>.</param>
    public DataScripts(SitePlan plan, Theme theme, Func<ImmutableArray<PlannedPage>, Func<byte[]>, byte[]> recall)
    {
        (this.plan, this.theme, view) = (plan, theme, new(plan, theme, Addresses.Home));
        search = Task.Run(() => SearchScripts.Of(plan, view, recall));
    }

    SearchScripts Search => search.GetAwaiter().GetResult();

    /// <summary>What depends on no page but on which there are.</summary>
    public IEnumerable<SiteFile> OfCommon() =>
    [
        new SiteFile("data/standard-codes.js", () => Script("standardCodes", WriteStandardCodes)),
        .. plan.Groups.Select(g => new SiteFile($"data/codes/{g.Name.ToLowerInvariant()}.js", () => GroupScript(g))),
    ];

    /// <summary>What does not depend on the text of pages.</summary>
    public IEnumerable<SiteFile> OfFrame() =>
    [
        new SiteFile("data/codes.js", () => Script("codes", WriteCodes)),
        new SiteFile("data/weigh.js", () => Script("weigh", json => WeighScript.Write(json, view))),
    ];

    /// <summary>What depends on the text of all pages. For the search it is waited then.</summary>
    public IEnumerable<SiteFile> OfText()
    {
        yield return new SiteFile("data/site.js", () => Script("site", json => WriteSite(json, Search.Head)));
        foreach (var file in Search.Files) yield return file;
    }

    /// <summary>The writer's default encoder leaves no sign that could end a script.</summary>
    static byte[] Script(string name, Action<Utf8JsonWriter> write) => Script($"((globalThis.GuideGen ??= {{}}).data ??= {{}}).{name} = ", ";\n", write);

    static byte[] Script(string before, string after, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        stream.Write(Encoding.UTF8.GetBytes(before));
        using (var json = new Utf8JsonWriter(stream)) write(json);
        stream.Write(Encoding.UTF8.GetBytes(after));
        return stream.ToArray();
    }

    /// <summary>Where the search begins, and the words that scripts put on pages.</summary>
    void WriteSite(Utf8JsonWriter json, string searchHead)
    {
        json.WriteStartObject();
        json.WriteString("searchHead", searchHead);
        json.WriteString("lunr", SearchScripts.Lunr);
        json.WritePropertyName("words");
        Write(json, (ScriptObject)theme.Words.Tree["script"]!);
        json.WriteEndObject();
    }

    static void Write(Utf8JsonWriter json, ScriptObject words)
    {
        json.WriteStartObject();
        foreach (var (key, value) in words)
        {
            json.WritePropertyName(key);
            if (value is ScriptObject group) Write(json, group);
            else json.WriteStringValue((string?)value);
        }

        json.WriteEndObject();
    }

    /// <summary>The codes of this guide with everything that a look-up shows.</summary>
    void WriteCodes(Utf8JsonWriter json)
    {
        var cases = plan.Guide.Cases.SelectMany(c => c.Codes.Select(k => k.Key.Value)).CountBy(c => c).ToDictionary();
        json.WriteStartArray();
        foreach (var code in plan.Codes)
        {
            json.WriteStartObject();
            json.WriteString("code", code.ToString());
            json.WriteString("meaning", CodeWords.MeaningOf(view, code));
            json.WriteString("href", view.Links.Of(code));
            json.WriteNumber("cases", cases.GetValueOrDefault(code));
            json.WriteStartArray("faults");
            foreach (var (fault, likelihood) in plan.Relations.FaultsByCode[code])
            {
                json.WriteStartObject();
                json.WriteString("name", fault.Name.Value);
                json.WriteString("href", view.Links.Of(fault));
                json.WriteString("likelihood", theme.Words["likelihood." + likelihood.InWords()]);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A bit for each of the 65,536 possible codes, set if the standard gives it a meaning: enough to tell a slip from a code.</summary>
    static void WriteStandardCodes(Utf8JsonWriter json)
    {
        var bits = new byte[65_536 / 8];
        foreach (var entry in CodeCatalogue.Standard) bits[entry.Code.Value >> 3] |= (byte)(1 << (entry.Code.Value & 7));
        json.WriteBase64StringValue(bits);
    }

    /// <summary>What the standard's codes of a group mean: the last two characters and the words.</summary>
    static byte[] GroupScript(CodeGroup group) => Script($"GuideGen.look.take(\"{group.Name}\", ", ");\n", json =>
    {
        json.WriteStartObject();
        foreach (var entry in group.Rows.Select(r => r.Entry).OfType<CodeEntry>()) json.WriteString(entry.Code.ToString()[3..], entry.Meaning);
        json.WriteEndObject();
    });
}
