using System.Threading.Channels;

namespace GuideGen.Site.Preview;

/// <summary>Says when something in a folder has changed: once for a burst of changes, as an editor makes them when it saves.</summary>
public sealed class GuideWatcher : IDisposable
{
    static readonly TimeSpan Calm = TimeSpan.FromMilliseconds(15);

    readonly FileSystemWatcher watcher;
    readonly Channel<bool> changed = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });

    /// <exception cref="IOException">The system watches no more folders.</exception>
    public GuideWatcher(string folder)
    {
        watcher = new FileSystemWatcher(folder) { IncludeSubdirectories = true, InternalBufferSize = 64 * 1024 };
        watcher.Changed += (_, _) => Signal();
        watcher.Created += (_, _) => Signal();
        watcher.Deleted += (_, _) => Signal();
        watcher.Renamed += (_, _) => Signal();
        // Too much at once: what exactly changed does not matter, as everything is read anew.
        watcher.Error += (_, _) => Signal();
        watcher.EnableRaisingEvents = true;
    }

    /// <summary>Ends when something has changed and nothing more came for a moment.</summary>
    public async Task Next(CancellationToken stop)
    {
        await changed.Reader.ReadAsync(stop);
        do await Task.Delay(Calm, stop);
        while (changed.Reader.TryRead(out _));
    }

    public void Dispose() => watcher.Dispose();

    void Signal() => changed.Writer.TryWrite(true);
}
