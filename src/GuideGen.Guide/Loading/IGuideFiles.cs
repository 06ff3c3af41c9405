namespace GuideGen.Guide.Loading;

/// <summary>The files of a guide, from a folder or from memory: the only way a stage gets at them.</summary>
public interface IGuideFiles
{
    /// <summary>Paths relative to the guide's folder, with forward slashes, in ordinal order.</summary>
    IReadOnlyList<string> Paths { get; }

    /// <summary>What stands among the files and is not read.</summary>
    IReadOnlyList<LeftOut> LeftOut => [];

    /// <param name="path">One of <see cref="Paths"/>.</param>
    /// <returns>While it is the same, so is the content. Null where that cannot be told without reading it.</returns>
    FileStamp? StampOf(string path) => null;

    /// <param name="path">One of <see cref="Paths"/>.</param>
    /// <returns>False if the file cannot be read (any more); <paramref name="why"/> then says why.</returns>
    bool TryRead(string path, out byte[] bytes, out string why);
}

/// <summary>How long a file is and when it was written last, in ticks of universal time.</summary>
public readonly record struct FileStamp(long Length, long Written);

/// <summary>Something that is not read: a link, wherever it leads, or a folder that cannot be opened.</summary>
/// <param name="Path">As in <see cref="IGuideFiles.Paths"/>.</param>
/// <param name="Why">Why it cannot be opened; null for a link.</param>
public sealed record LeftOut(string Path, string? Why);

public sealed class MemoryFiles(IReadOnlyDictionary<string, byte[]> files) : IGuideFiles
{
    public IReadOnlyList<string> Paths { get; } = [.. files.Keys.Order(StringComparer.Ordinal)];

    public bool TryRead(string path, out byte[] bytes, out string why)
    {
        why = "";
        bytes = files[path];
        return true;
    }
}
