using System.IO.Compression;
using System.Net;
using System.Net.Sockets;

namespace GuideGen.Browser.Tests;

/// <summary>Serves a folder on loopback below a path of its own, as a plain web host does: files, types, packed where the browser takes it, and 404.</summary>
sealed class StaticServer : IAsyncDisposable
{
    static readonly Dictionary<string, string> Types = new()
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".txt"] = "text/plain; charset=utf-8",
        [".webmanifest"] = "application/manifest+json",
    };

    readonly HttpListener listener = new();
    readonly string folder;
    readonly Task loop;

    /// <param name="subFolder">Where the site stands on the host, such as <c>/club/guide/</c>.</param>
    public StaticServer(string folder, string subFolder)
    {
        this.folder = folder;
        Root = $"http://127.0.0.1:{FreePort()}{subFolder}";
        listener.Prefixes.Add(Root);
        listener.Start();
        loop = Serve();
    }

    public string Root { get; }

    public async ValueTask DisposeAsync()
    {
        listener.Stop();
        await loop;
        listener.Close();
    }

    async Task Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                await Answer(await listener.GetContextAsync());
            }
            catch (Exception fault) when (fault is HttpListenerException or ObjectDisposedException)
            {
                // The server was stopped, or the browser went away while a file was sent.
            }
        }
    }

    async Task Answer(HttpListenerContext context)
    {
        var path = Uri.UnescapeDataString(context.Request.Url!.AbsolutePath)[new Uri(Root).AbsolutePath.Length..];
        var file = Path.GetFullPath(Path.Combine(folder, path));
        if (path.Length == 0 || path.EndsWith('/')) file = Path.Combine(file, "index.html");
        var response = context.Response;
        var isThere = file.StartsWith(folder, StringComparison.Ordinal) && File.Exists(file);
        var isPacked = isThere && Types.ContainsKey(Path.GetExtension(file)) && context.Request.Headers["Accept-Encoding"]?.Contains("gzip", StringComparison.Ordinal) == true;
        var bytes = isThere ? await File.ReadAllBytesAsync(file) : [];
        if (isPacked)
        {
            bytes = Packed(bytes);
            response.AddHeader("Content-Encoding", "gzip");
        }

        response.StatusCode = isThere ? 200 : 404;
        response.ContentType = Types.GetValueOrDefault(Path.GetExtension(file), "application/octet-stream");
        response.ContentLength64 = bytes.Length;
        await response.OutputStream.WriteAsync(bytes);
        response.Close();
    }

    static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal)) gzip.Write(bytes);
        return packed.ToArray();
    }

    static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
