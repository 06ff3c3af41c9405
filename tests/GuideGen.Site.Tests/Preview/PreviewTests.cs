using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using GuideGen.Guide.Loading;
using GuideGen.Site.Preview;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Preview;

/// <summary>A preview asked by a real HTTP client, a rude one among them.</summary>
public sealed class PreviewTests : IAsyncDisposable
{
    const string Part = "content/parts/charge-air-hose.md";

    readonly TempFolder temp = new();
    readonly HttpClient client = new();
    readonly PreviewServer server;

    public PreviewTests()
    {
        var small = Guides.FolderOf(Guides.Small);
        foreach (var file in Directory.EnumerateFiles(small, "*", SearchOption.AllDirectories)) temp.Write(Path.GetRelativePath(small, file), File.ReadAllText(file));
        server = PreviewServer.Start(() => new FolderFiles(temp.PathTo()), ThemeFiles.BuiltIn);
        client.BaseAddress = server.Address;
        client.Timeout = TimeSpan.FromSeconds(20);
    }

    /// <summary>Whatever takes longer never comes.</summary>
    static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await server.DisposeAsync();
        temp.Dispose();
    }

    [Theory]
    [InlineData("", "text/html")]
    [InlineData("index.html", "text/html")]
    [InlineData("parts/charge-air-hose.html", "text/html")]
    [InlineData("data/codes.js", "text/javascript")]
    [InlineData("images/air%20path%20%231.svg", "image/svg+xml")]
    [InlineData("guide.json", "application/json")]
    [InlineData("_preview/overlay.js", "text/javascript")]
    public async Task Every_file_of_the_site_is_there(string address, string type)
    {
        using var answer = await client.GetAsync(new Uri(address, UriKind.Relative), Stop);

        Assert.Equal((HttpStatusCode.OK, type), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task A_page_is_the_compiled_one_and_the_overlay()
    {
        var page = await client.GetStringAsync(new Uri("safety.html", UriKind.Relative), Stop);

        var without = Regex.Replace(page, "<link rel=\"stylesheet\" href=\"/_preview/overlay.css\"><script src=\"/_preview/overlay.js\" data-page='\"[0-9a-f]{16}\"'></script>\n", "");
        Assert.NotEqual(page, without);
        Assert.Equal(CompiledSite.Of(Guides.Small).Text("safety.html"), without);
    }

    [Fact]
    public async Task An_edit_changes_the_page_and_pages_are_told()
    {
        using var events = new StreamReader(await client.GetStreamAsync(new Uri("_preview/events", UriKind.Relative), Stop));
        Assert.Equal(1, (await Next(events)).GetProperty("version").GetInt32());

        Edit("It carries the boost.", "It carries the compressed air.");
        server.Refresh();

        var news = await Next(events);
        Assert.Equal((2, true), (news.GetProperty("version").GetInt32(), news.GetProperty("isGood").GetBoolean()));
        Assert.Contains("It carries the compressed air.", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_edit_changes_the_tag_of_the_pages_it_is_about_and_of_no_other()
    {
        var before = await Tags();

        Edit("It carries the boost.", "It carries the compressed air.");
        server.Refresh();

        var after = await Tags();
        Assert.Equal(["parts/charge-air-hose.html"], before.Keys.Where(a => before[a] != after[a]));

        async Task<Dictionary<string, string>> Tags()
        {
            var tags = new Dictionary<string, string>();
            foreach (var address in CompiledSite.Of(Guides.Small).Pages.Keys)
            {
                using var request = new HttpRequestMessage(HttpMethod.Head, new Uri(address, UriKind.Relative));
                using var answer = await client.SendAsync(request, Stop);
                tags[address] = answer.Headers.ETag!.Tag;
            }

            return tags;
        }
    }

    [Fact]
    public async Task The_last_good_page_stays_while_the_content_is_broken()
    {
        Edit("name: Charge-air hose", "nam: [broken");
        File.WriteAllBytes(temp.PathTo("content", "vehicle.yml"), [0xFF, 0x00]);
        File.Delete(temp.PathTo("site-config.yml"));
        server.Refresh();

        using var events = new StreamReader(await client.GetStreamAsync(new Uri("_preview/events", UriKind.Relative), Stop));
        var news = await Next(events);
        Assert.False(news.GetProperty("isGood").GetBoolean());
        Assert.Contains(news.GetProperty("findings").EnumerateArray(), f => f.GetProperty("line").GetString()!.Contains(Part, StringComparison.Ordinal));
        Assert.Contains("<p>It carries the ", await Page(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_watcher_sees_an_edit_within_a_second()
    {
        using var watcher = new GuideWatcher(temp.PathTo());
        var change = watcher.Next(Stop);

        Edit("It carries the boost.", "It carries the compressed air.");

        await change.WaitAsync(Patience, Stop);
        server.Refresh();
        Assert.Contains("It carries the compressed air.", await Page(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/../site-config.yml")]
    [InlineData("/..%2fsite-config.yml")]
    [InlineData("/%2e%2e/site-config.yml")]
    [InlineData("/content/vehicle.yml")]
    [InlineData("/parts/..%5c..%5csite-config.yml")]
    [InlineData("//etc/passwd")]
    [InlineData("/assets/../../site-config.yml")]
    [InlineData("/%00")]
    [InlineData("/_preview/../../site-config.yml")]
    public async Task No_path_leads_out_of_the_site(string path)
    {
        var answer = await Ask($"GET {path} HTTP/1.1\r\nHost: {server.Address.Authority}\r\nConnection: close\r\n\r\n");

        Assert.Matches("^HTTP/1.1 4", answer);
        Assert.DoesNotContain("title: Small Loris guide", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Host: evil.example")]
    [InlineData("Host: evil.example:80")]
    [InlineData("Host: localhost")]
    [InlineData("Host: ")]
    [InlineData("Host: {0}\r\nOrigin: https://evil.example")]
    [InlineData("Host: {0}\r\nOrigin: null")]
    [InlineData("Host: {0}.evil.example")]
    [InlineData("Host: {0}\r\nSec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: no-cors\r\nSec-Fetch-Dest: script")]
    [InlineData("Host: {0}\r\nSec-Fetch-Site: same-site\r\nSec-Fetch-Mode: no-cors\r\nSec-Fetch-Dest: image")]
    [InlineData("Host: {0}\r\nSec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: navigate\r\nSec-Fetch-Dest: iframe")]
    [InlineData("Host: {0}\r\nSec-Fetch-Site: cross-site")]
    [InlineData("Host: {0}\r\nSec-Fetch-Site: same-origin, cross-site\r\nSec-Fetch-Mode: cors\r\nSec-Fetch-Dest: empty")]
    public async Task Nobody_else_may_ask(string headers)
    {
        var given = headers.Replace("{0}", server.Address.Authority, StringComparison.Ordinal);

        var answer = await Ask($"GET / HTTP/1.1\r\n{given}\r\nConnection: close\r\n\r\n");

        Assert.DoesNotMatch("^HTTP/1.1 2", answer);
        Assert.DoesNotContain("Small Loris guide", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Sec-Fetch-Site: none\r\nSec-Fetch-Mode: navigate\r\nSec-Fetch-Dest: document\r\n")]
    [InlineData("Sec-Fetch-Site: same-origin\r\nSec-Fetch-Mode: no-cors\r\nSec-Fetch-Dest: script\r\n")]
    [InlineData("Sec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: navigate\r\nSec-Fetch-Dest: document\r\n")]
    public async Task Whoever_types_the_address_or_follows_a_link_is_shown_the_guide(string headers)
    {
        var answer = await Ask($"GET / HTTP/1.1\r\nHost: {server.Address.Authority}\r\n{headers}Connection: close\r\n\r\n");

        Assert.Matches("^HTTP/1.1 200", answer);
        Assert.Contains("Small Loris guide", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET http://evil.example/ HTTP/1.1")]
    [InlineData("GET http://evil.example/site-config.yml HTTP/1.1")]
    [InlineData("GET file:///etc/passwd HTTP/1.1")]
    [InlineData("GET * HTTP/1.1")]
    [InlineData("GET index.html HTTP/1.1")]
    [InlineData("GET / HTTP/9.9")]
    [InlineData("GET /")]
    [InlineData("CONNECT evil.example:443 HTTP/1.1")]
    [InlineData("OPTIONS * HTTP/1.1")]
    [InlineData("OPTIONS / HTTP/1.1")]
    [InlineData("TRACE / HTTP/1.1")]
    [InlineData("PATCH /index.html HTTP/1.1")]
    [InlineData("PROPFIND / HTTP/1.1")]
    [InlineData("SHOW / HTTP/1.1")]
    [InlineData("get / HTTP/1.1")]
    public async Task What_is_no_plain_request_is_not_answered_with_a_page(string line)
    {
        var answer = await Ask($"{line}\r\nHost: {server.Address.Authority}\r\nConnection: close\r\n\r\n");

        Assert.DoesNotMatch("^HTTP/1.1 2", answer);
        Assert.DoesNotContain("Small Loris guide", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
        Assert.Contains("<p>It carries the ", await Page(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(9_000, 1)]
    [InlineData(200_000, 1)]
    [InlineData(100, 3_000)]
    public async Task A_request_beyond_all_measure_ends_itself_and_nothing_else(int length, int headers)
    {
        var many = string.Concat(Enumerable.Range(0, headers).Select(i => $"X-{i}: {new string('x', length)}\r\n"));

        var lines = await Ask($"GET /{new string('x', length)} HTTP/1.1\r\nHost: {server.Address.Authority}\r\nConnection: close\r\n\r\n");
        var heads = await Ask($"GET /nothing HTTP/1.1\r\nHost: {server.Address.Authority}\r\n{many}Connection: close\r\n\r\n");

        Assert.DoesNotMatch("^HTTP/1.1 2", lines);
        Assert.DoesNotMatch("^HTTP/1.1 2", heads);
        Assert.Contains("<p>It carries the ", await Page(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("POST")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    public async Task It_only_shows(string method)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), new Uri("index.html", UriKind.Relative)) { Content = new StringContent("x") };
        using var answer = await client.SendAsync(request, Stop);

        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
    }

    [Fact]
    public async Task Slow_clients_hold_up_nobody()
    {
        var slow = new List<TcpClient>();
        try
        {
            for (var i = 0; i < 40; i++)
            {
                var half = new TcpClient { ReceiveBufferSize = 1024 };
                await half.ConnectAsync(IPAddress.Loopback, server.Address.Port, Stop);
                var ask = i % 2 == 0 ? "GET /index.html HTT" : $"GET /_preview/events HTTP/1.1\r\nHost: {server.Address.Authority}\r\n\r\n";
                await half.GetStream().WriteAsync(Encoding.ASCII.GetBytes(ask), Stop);
                slow.Add(half);
            }

            for (var i = 0; i < 20; i++) server.Refresh();
            Assert.Contains("<p>It carries the ", await Page(), StringComparison.Ordinal);
        }
        finally
        {
            slow.ForEach(s => s.Dispose());
        }
    }

    [Fact]
    public void A_port_that_is_taken_is_told() =>
        Assert.Contains("--port", Assert.Throws<IOException>(() => PreviewServer.Start(() => new FolderFiles(temp.PathTo()), ThemeFiles.BuiltIn, server.Address.Port)).Message, StringComparison.Ordinal);

    [Fact]
    public void It_writes_nothing_into_the_guide()
    {
        var before = Directory.GetFileSystemEntries(temp.PathTo(), "*", SearchOption.AllDirectories);

        server.Refresh();

        Assert.Equal(before.Order(), Directory.GetFileSystemEntries(temp.PathTo(), "*", SearchOption.AllDirectories).Order());
    }

    Task<string> Page() => client.GetStringAsync(new Uri("parts/charge-air-hose.html", UriKind.Relative), Stop);

    void Edit(string old, string @new) => File.WriteAllText(temp.PathTo(Part.Split('/')), File.ReadAllText(temp.PathTo(Part.Split('/'))).Replace(old, @new, StringComparison.Ordinal));

    static async Task<JsonElement> Next(StreamReader events)
    {
        while (await events.ReadLineAsync(Stop).AsTask().WaitAsync(Patience, Stop) is { } line)
        {
            if (line.StartsWith("data: ", StringComparison.Ordinal)) return JsonDocument.Parse(line[6..]).RootElement;
        }

        throw new EndOfStreamException();
    }

    async Task<string> Ask(string request)
    {
        using var rude = new TcpClient();
        await rude.ConnectAsync(IPAddress.Loopback, server.Address.Port, Stop);
        await rude.GetStream().WriteAsync(Encoding.ASCII.GetBytes(request), Stop);
        using var reader = new StreamReader(rude.GetStream());
        return await reader.ReadToEndAsync(Stop).WaitAsync(Patience, Stop);
    }
}
