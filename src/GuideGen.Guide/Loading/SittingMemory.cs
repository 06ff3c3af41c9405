using System.Collections.Concurrent;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>
/// What was worked out, for a guide that is read again and again while it is written: what follows from the same contents is not worked
/// out anew. It forgets whatever one reading did not ask for, so it never holds more than one guide.
/// </summary>
/// <remarks>What is kept is given out again as it is, so it must never change.</remarks>
public sealed class SittingMemory : GuideMemory
{
    ConcurrentDictionary<(string Path, string Circumstances), FileResult> lastFiles = [], files = [];
    ConcurrentDictionary<(string What, Digest Frame, Digest Page), object> last = [], current = [];

    sealed record FileResult(FileStamp?[] Stamps, byte[][] Files, object Result);

    internal override void Turn()
    {
        (lastFiles, files) = (files, []);
        (last, current) = (current, []);
    }

    public override T Recall<T>(string what, Digest frame, Digest page, Func<T> make)
    {
        var key = (what, frame, page);
        var made = last.TryGetValue(key, out var kept) ? kept : current.TryGetValue(key, out kept) ? kept : make();
        current[key] = made;
        return (T)made;
    }

    public override byte[] Recall(Digest content, Func<byte[]> make) => Recall("made", content, make);

    internal override T? Before<T>(string what)
        where T : class => last.TryGetValue((what, default, default), out var kept) ? (T)kept : null;

    internal override void Keep(string what, object made) => current[(what, default, default)] = made;

    internal override T Recall<T>(IGuideFiles from, string[] paths, string circumstances, Func<IGuideFiles, T> read)
    {
        var key = (paths[0], circumstances);
        var kept = lastFiles.GetValueOrDefault(key);
        var stamps = Array.ConvertAll(paths, from.StampOf);
        if (kept is not null && stamps.All(s => s is not null) && stamps.SequenceEqual(kept.Stamps)) return Kept(kept);
        var contents = new byte[paths.Length][];
        for (var i = 0; i < paths.Length; i++)
        {
            if (!from.TryRead(paths[i], out contents[i], out _)) return read(from);
        }

        return kept is not null && kept.Files.Length == contents.Length && kept.Files.Zip(contents).All(f => f.First.AsSpan().SequenceEqual(f.Second))
            ? Kept(kept with { Stamps = stamps })
            : Kept(new FileResult(stamps, contents, read(new MemoryFiles(paths.Zip(contents).ToDictionary()))));

        T Kept(FileResult result)
        {
            files[key] = result;
            return (T)result.Result;
        }
    }
}
