using System.Collections.Concurrent;

namespace GuideGen.Guide.Loading;

/// <summary>
/// What files yielded, for a guide that is read again and again while it is written: what follows from the same bytes is not worked out
/// anew. It forgets whatever one reading did not ask for, so it never holds more than one guide.
/// </summary>
public sealed class ReadingMemory
{
    ConcurrentDictionary<(string Path, string Circumstances), Kept> last = [], current = [];

    sealed record Kept(byte[][] Files, object Result);

    /// <summary>A new reading of the guide begins.</summary>
    internal void Turn() => (last, current) = (current, []);

    /// <param name="paths">All that <paramref name="read"/> reads; the first names the result.</param>
    /// <param name="circumstances">Whatever else the result depends on.</param>
    /// <param name="read">Asked with the files as they are at this moment. What it makes must never change.</param>
    internal T Recall<T>(IGuideFiles files, string[] paths, string circumstances, Func<IGuideFiles, T> read)
        where T : notnull
    {
        var contents = new byte[paths.Length][];
        for (var i = 0; i < paths.Length; i++)
        {
            if (!files.TryRead(paths[i], out contents[i], out _)) return read(files);
        }

        var key = (paths[0], circumstances);
        if (!last.TryGetValue(key, out var kept) || !kept.Files.Zip(contents).All(f => f.First.AsSpan().SequenceEqual(f.Second)))
            kept = new Kept(contents, read(new MemoryFiles(paths.Zip(contents).ToDictionary())));
        current[key] = kept;
        return (T)kept.Result;
    }
}
