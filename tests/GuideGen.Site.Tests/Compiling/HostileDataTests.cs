using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Jint;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>A text in every field of a guide that would like to end the script, the data block or the feed it comes into.</summary>
public sealed partial class HostileDataTests
{
    static readonly ConcurrentDictionary<string, CompiledSite> Sites = new();

    static readonly string[] Endings =
    [
        "</script><script>alert(1)</script>", "<!--<script>", "]]>", "--> <img src=x>", "\\\"; alert(1); //", "${alert(1)} `", "{{ page.root }}", "</textarea></title></style>", "\u2028alert(1)\u2029", "\uFEFF", "&lt;&quot;&#39;", "*/ alert(1) /*", "\uD83D\uDE90 \u0301", "{0} {1:x} {",
    ];

    static readonly string[] Kinds = ["scripts", "pages", "linked data", "feeds", "JSON"];

    public static TheoryData<string, string> Cases => [.. from e in Endings from k in Kinds select (e, k)];

    [Theory, MemberData(nameof(Cases))]
    public void Nothing_ends_early_and_everything_can_be_read(string ending, string kind)
    {
        var site = Sites.GetOrAdd(ending, e => CompiledSite.Compile(With(e), 2));

        switch (kind)
        {
            case "scripts":
                AssertScriptsAreData(site);
                break;
            case "pages":
                Assert.All(site.Pages.Values, p => Assert.Equal(Scripts(Plain.Pages[p.Address]), Scripts(p)));
                break;
            case "linked data":
                Assert.Contains(site.Pages.Values.SelectMany(LinkedDataOf), d => d.GetProperty("name").GetString()!.EndsWith(ending.Trim(), StringComparison.Ordinal));
                break;
            case "feeds":
                Assert.Contains(ending.Trim(), XDocument.Parse(site.Text("feed.xml")).Root!.Value, StringComparison.Ordinal);
                break;
            default:
                Assert.All(site.Files.Keys.Where(a => a.EndsWith(".json", StringComparison.Ordinal) || a.EndsWith(".webmanifest", StringComparison.Ordinal)), a => JsonDocument.Parse(site.Files[a]));
                break;
        }
    }

    static CompiledSite Plain { get; } = CompiledSite.Compile(With("plain"), 2);

    /// <remarks>What data/codes/ holds comes from the standard alone.</remarks>
    static void AssertScriptsAreData(CompiledSite site)
    {
        foreach (var address in site.Files.Keys.Where(a => a.StartsWith("data/", StringComparison.Ordinal) && !a.StartsWith("data/codes/", StringComparison.Ordinal)))
        {
            var text = site.Text(address);
            Assert.True(!text.Any(c => c is '<' or '\u2028' or '\u2029'), address);
            var engine = new Engine();
            engine.Execute("globalThis.alert = () => { throw 'called'; }; globalThis.GuideGen = { look: { take() { } }, search: { take() { } } };");
            engine.Execute(text);
        }
    }

    static string Scripts(SitePage page) => string.Join('\n', page.Document.QuerySelectorAll("script").Select(s => s.GetAttribute("src") ?? s.GetAttribute("type")));

    static IEnumerable<JsonElement> LinkedDataOf(SitePage page) =>
        page.Document.QuerySelectorAll("script[type='application/ld+json']").Select(s => JsonDocument.Parse(s.TextContent).RootElement);

    static Overlay With(string ending)
    {
        var hostile = Guides.Open(Guides.Hostile);
        var guide = new Overlay(hostile);
        foreach (var path in hostile.Paths)
        {
            Assert.True(hostile.TryRead(path, out var bytes, out _));
            guide.Put(path, Field().Replace(Encoding.UTF8.GetString(bytes), m => Quoted(m.Groups[1].Value + ending)));
        }

        return guide.Append("site-config.yml", "base: https://club.example/loris/\n").Replace("content/tasks/bad.md", "minutes: 5\n", "minutes: 5\nreviewed: 2026-07-01\n");
    }

    static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\u2028", "\\u2028", StringComparison.Ordinal).Replace("\u2029", "\\u2029", StringComparison.Ordinal)}\"";

    [GeneratedRegex("""'(<script>[a-z0-9-]+\(\)</script> )& "two" ''one'' <b onclick=x>'""", RegexOptions.CultureInvariant)]
    private static partial Regex Field();
}
