using System.Collections.Concurrent;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>
/// What was worked out, for a guide that is read again and again while it is written: what follows from the same contents is not worked
/// out anew. It forgets whatever one reading did not ask for, so it never holds more than one guide.
/// </summary>
/// <remarks>What is kept is given out again as it is, so it must never change.</remarks>
public sealed class GuideMemory
{
    readonly bool keeps;
    ConcurrentDictionary<(string Path, string Circumstances), FileResult> lastFiles = [], files = [];
    ConcurrentDictionary<(string What, Digest Frame, Digest Page), object> last = [], current = [];

    public GuideMemory()
        : this(keeps: true)
    {
    }

    GuideMemory(bool keeps) => this.keeps = keeps;

    /// <summary>Remembers nothing: for a guide that is read once.</summary>
    public static GuideMemory None { get; } = new(keeps: false);

    sealed record FileResult(FileStamp?[] Stamps, byte[][] Files, object Result);

    /// <summary>A new reading of the guide begins.</summary>
    internal void Turn()
    {
        if (!keeps) return;
        (lastFiles, files) = (files, []);
        (last, current) = (current, []);
    }

    /// <param name="what">What is made, and whatever it depends on apart from the contents.</param>
    /// <param name="frame">See <see cref="Model.GuideContent.Frame"/>.</param>
    /// <param name="make">Depends on nothing else.</param>
    public T Recall<T>(string what, Digest frame, Func<T> make)
        where T : notnull => Recall(what, frame, default, make);

    /// <inheritdoc cref="Recall{T}(string, Digest, Func{T})"/>
    /// <param name="page">See <see cref="Model.PageOrigin.Whole"/>.</param>
    public T Recall<T>(string what, Digest frame, Digest page, Func<T> make)
        where T : notnull
    {
        if (!keeps) return make();
        var key = (what, frame, page);
        var made = last.TryGetValue(key, out var kept) ? kept : current.TryGetValue(key, out kept) ? kept : make();
        current[key] = made;
        return (T)made;
    }

    /// <summary>What was kept under a name at the reading before, whatever the contents were then.</summary>
    public T? Before<T>(string what)
        where T : class => last.TryGetValue((what, default, default), out var kept) ? (T)kept : null;

    /// <summary>Keeps something for <see cref="Before"/>.</summary>
    public void Keep(string what, object made)
    {
        if (keeps) current[(what, default, default)] = made;
    }

    /// <param name="paths">All that <paramref name="read"/> reads; the first names the result.</param>
    /// <param name="circumstances">Whatever else the result depends on.</param>
    /// <param name="read">Asked with the files as they are at this moment.</param>
    internal T Recall<T>(IGuideFiles from, string[] paths, string circumstances, Func<IGuideFiles, T> read)
        where T : notnull
    {
        if (!keeps) return read(from);
        var key = (paths[0], circumstances);
        var kept = lastFiles.GetValueOrDefault(key);
        var stamps = Array.ConvertAll(paths, from.StampOf);
        if (kept is not null && stamps.All(s => s is not null) && stamps.SequenceEqual(kept.Stamps)) return Kept(kept);
        var contents = new byte[paths.Length][];
        for (var i = 0; i < paths.Length; i++)
        {
            if (!from.TryRead(paths[i], out contents[i], out _)) return read(from);
        }

        return kept is not null && kept.Files.Zip(contents).All(f => f.First.AsSpan().SequenceEqual(f.Second))
            ? Kept(kept with { Stamps = stamps })
            : Kept(new FileResult(stamps, contents, read(new MemoryFiles(paths.Zip(contents).ToDictionary()))));

        T Kept(FileResult result)
        {
            files[key] = result;
            return (T)result.Result;
        }
    }
}
