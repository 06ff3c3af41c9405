using System.Collections.Immutable;
using System.Net;
using System.Net.Sockets;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Preview;

/// <summary>
/// Shows a guide while it is written: from memory, to this machine only. Nothing is written anywhere, and no path of a
/// request ever reaches the disk: it is looked up among the addresses of the site.
/// </summary>
/// <remarks>
/// HttpListener rather than a web framework: it does all that one author's browser needs, and the tool still starts where
/// only the plain runtime is installed. Each request is answered on its own, so that a slow one holds up no other.
/// </remarks>
public sealed class PreviewServer : IAsyncDisposable
{
    const int PortTries = 10;

    readonly HttpListener listener;
    readonly PreviewAnswers answers;
    readonly PreviewEvents events = new();
    readonly Func<IGuideFiles> open;
    readonly ThemeFiles theme;
    readonly DateOnly? today;
    readonly CancellationTokenSource closing = new();
    readonly Task loop;
    readonly Lock rebuilding = new();
    readonly SittingMemory memory = new();
    volatile PreviewSite site = PreviewSite.None;

    PreviewServer(HttpListener listener, int port, Func<IGuideFiles> open, ThemeFiles theme, DateOnly? today)
    {
        (this.listener, this.open, this.theme, this.today) = (listener, open, theme, today);
        Address = new Uri($"http://{IPAddress.Loopback}:{port}/");
        answers = new PreviewAnswers(() => site, events, Address);
        Refresh();
        loop = Task.Run(Serve);
    }

    public Uri Address { get; }

    /// <summary>What was found when the guide was read last.</summary>
    public ImmutableArray<Finding> Findings => site.Findings;

    /// <param name="open">Lists the files of the guide anew each time.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <param name="today">What is dated later is wrong; null if no day is to be compared with.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static PreviewServer Start(Func<IGuideFiles> open, ThemeFiles theme, int port = 0, DateOnly? today = null)
    {
        for (var tried = 1; ; tried++)
        {
            var chosen = port == 0 ? FreePort() : port;
            var listener = new HttpListener { IgnoreWriteExceptions = true };
            listener.Prefixes.Add($"http://{IPAddress.Loopback}:{chosen}/");
            try
            {
                listener.Start();
                return new PreviewServer(listener, chosen, open, theme, today);
            }
            catch (HttpListenerException fault) when (port != 0 || tried == PortTries)
            {
                throw new IOException($"port {chosen} cannot be used: {fault.Message}. Name another one with --port, or none.", fault);
            }
            catch (HttpListenerException)
            {
                // Somebody took the free port in between.
            }
        }
    }

    /// <summary>Reads the guide anew and tells every open page.</summary>
    /// <returns>What was found.</returns>
    public ImmutableArray<Finding> Refresh()
    {
        lock (rebuilding)
        {
            site = site.Next(open(), theme, memory, today);
            events.Tell(answers.News());
            return site.Findings;
        }
    }

    public async ValueTask DisposeAsync()
    {
        events.Dispose();
        await closing.CancelAsync();
        listener.Stop();
        await loop;
        listener.Close();
        closing.Dispose();
    }

    async Task Serve()
    {
        while (!closing.IsCancellationRequested)
        {
            try
            {
                // A listener that is stopped in just the moment in which it is asked never answers.
                var context = await listener.GetContextAsync().WaitAsync(closing.Token);
                _ = Task.Run(() => answers.Answer(context));
            }
            catch (Exception fault) when (fault is HttpListenerException or ObjectDisposedException or InvalidOperationException or OperationCanceledException)
            {
                // The server is stopped, or a client went away before it had asked.
            }
        }
    }

    static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
