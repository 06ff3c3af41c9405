using System.Collections.Concurrent;
using System.Net;
using System.Text;
using System.Threading.Channels;

namespace GuideGen.Site.Preview;

/// <summary>Tells open pages that there is something new, by server-sent events (HTML Living Standard 9.2).</summary>
/// <remarks>Each page has a place for one message, the newest: a page that does not listen holds up nobody and costs nothing.</remarks>
sealed class PreviewEvents : IDisposable
{
    const int MostPages = 64;

    static readonly TimeSpan Beat = TimeSpan.FromSeconds(15);

    readonly ConcurrentDictionary<Channel<string>, bool> pages = new();
    readonly CancellationTokenSource closing = new();
    readonly CancellationToken stop;
    volatile string newest = "{}";

    public PreviewEvents() => stop = closing.Token;

    public void Tell(string news)
    {
        newest = news;
        foreach (var page in pages.Keys) page.Writer.TryWrite(news);
    }

    /// <summary>Ends what is sent; the pages ask again until they are closed.</summary>
    public void Dispose()
    {
        closing.Cancel();
        closing.Dispose();
    }

    /// <summary>Sends the newest message and every later one, until the page is closed.</summary>
    public async Task Follow(HttpListenerResponse response)
    {
        var page = Channel.CreateBounded<string>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest });
        if (pages.Count >= MostPages || !pages.TryAdd(page, true))
        {
            response.StatusCode = (int)HttpStatusCode.ServiceUnavailable;
            return;
        }

        try
        {
            response.ContentType = "text/event-stream";
            response.SendChunked = true;
            await Send(response, $"retry: 500\ndata: {newest}\n\n");
            while (!stop.IsCancellationRequested) await Send(response, await Next(page));
        }
        finally
        {
            pages.TryRemove(page, out _);
        }
    }

    /// <summary>The next message, or a line that only shows whether the page is still there.</summary>
    async Task<string> Next(Channel<string> page)
    {
        using var waiting = CancellationTokenSource.CreateLinkedTokenSource(stop);
        waiting.CancelAfter(Beat);
        try
        {
            return $"data: {await page.Reader.ReadAsync(waiting.Token)}\n\n";
        }
        catch (OperationCanceledException)
        {
            return ":\n\n";
        }
    }

    static async Task Send(HttpListenerResponse response, string text)
    {
        await response.OutputStream.WriteAsync(Encoding.UTF8.GetBytes(text));
        await response.OutputStream.FlushAsync();
    }
}
