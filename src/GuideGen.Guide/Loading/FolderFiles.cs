using System.Diagnostics.CodeAnalysis;
using System.IO.Enumeration;
using Microsoft.Win32.SafeHandles;

namespace GuideGen.Guide.Loading;

/// <summary>The files of a guide in a folder: <c>site-config.yml</c>, its translations, and everything below <c>content/</c> and <c>theme/</c>.</summary>
/// <remarks>
/// Hidden files and links are not part of a guide, at whatever level they stand. Of a file that is larger
/// than any that is used only the beginning is read, so that its size is seen and nothing more. A stamp tells a content only if the file
/// was left alone for a moment before it was listed: what is written twice in a moment may have one time for both.
/// </remarks>
public sealed class FolderFiles : IGuideFiles
{
    /// <summary>One byte more than the largest file that is used: what is longer has this length.</summary>
    const int MostBytes = (GuideLimits.PictureMebibytes << 20) + 1;

    static readonly EnumerationOptions Visible = new() { AttributesToSkip = FileAttributes.Hidden | FileAttributes.System, IgnoreInaccessible = false };

    static readonly TimeSpan Moment = TimeSpan.FromSeconds(2);

    readonly string folder;
    readonly long settledBefore;
    readonly List<string> paths = [];
    readonly Dictionary<string, FileStamp> stamps = new(StringComparer.Ordinal);
    readonly List<LeftOut> leftOut = [];

    /// <param name="clock">For a folder that is listed again and again; without it no file has a stamp.</param>
    public FolderFiles(string folder, TimeProvider? clock = null)
    {
        this.folder = folder;
        settledBefore = clock is null ? 0 : (clock.GetUtcNow().UtcDateTime - Moment).Ticks;
        FindAll();
        paths.Sort(StringComparer.Ordinal);
    }

    public IReadOnlyList<string> Paths => paths;

    public IReadOnlyList<LeftOut> LeftOut => leftOut;

    public FileStamp? StampOf(string path) => stamps.TryGetValue(path, out var stamp) ? stamp : null;

    public bool TryRead(string path, out byte[] bytes, out string why)
    {
        var isRead = TryDo(() => Read(new FileInfo(Path.Combine(folder, path))), out var read, out why);
        bytes = read ?? [];
        return isRead;
    }

    static byte[] Read(FileInfo file)
    {
        // A pipe has no length, and whoever opens it waits for ever.
        if (file.Length == 0) return [];
        using var handle = File.OpenHandle(file.FullName);
        var bytes = new byte[Math.Min(RandomAccess.GetLength(handle), MostBytes)];
        var read = FromStart(handle, bytes);
        return read == bytes.Length ? bytes : bytes[..read];
    }

    /// <summary>Reads a file from its start, without the buffers and the objects to be finalised that a stream brings for each of thousands.</summary>
    /// <param name="bytes">Filled as far as the file reaches.</param>
    /// <returns>How many bytes were read.</returns>
    public static int FromStart(SafeFileHandle file, Span<byte> bytes)
    {
        var all = 0;
        for (int some; all < bytes.Length && (some = RandomAccess.Read(file, bytes[all..], all)) > 0;) all += some;
        return all;
    }

    void FindAll()
    {
        if (!Directory.Exists(folder)) return;
        foreach (var entry in EntriesOf(folder))
        {
            var isPart = entry.Name is "content" or ThemePieces.Folder;
            var isSettings = entry.Name == GuideLoader.SettingsFile || (Translation.TryParse(entry.Name, out var own) && own.Of == GuideLoader.SettingsFile);
            if (entry.IsFolder ? isPart : isSettings || (isPart && entry.IsLink)) Take(entry);
        }
    }

    void Take(Entry entry)
    {
        var path = Path.GetRelativePath(folder, entry.Path).Replace(Path.DirectorySeparatorChar, '/');
        if (entry.IsLink) leftOut.Add(new LeftOut(path, null));
        else if (!entry.IsFolder) TakeFile(path, entry.Stamp);
        else if (TryDo(() => EntriesOf(entry.Path), out var entries, out var why)) entries.ForEach(Take);
        else leftOut.Add(new LeftOut(path, why));
    }

    void TakeFile(string path, FileStamp stamp)
    {
        paths.Add(path);
        if (stamp.Written < settledBefore) stamps[path] = stamp;
    }

    static List<Entry> EntriesOf(string path) => [.. new FileSystemEnumerable<Entry>(path, EntryOf, Visible)];

    static Entry EntryOf(ref FileSystemEntry entry) => new(
        entry.ToFullPath(),
        entry.IsDirectory,
        entry.Attributes.HasFlag(FileAttributes.ReparsePoint),
        entry.IsDirectory ? default : new FileStamp(entry.Length, entry.LastWriteTimeUtc.UtcTicks));

    static bool TryDo<T>(Func<T> act, [MaybeNullWhen(false)] out T done, out string why)
    {
        try
        {
            (done, why) = (act(), "");
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            (done, why) = (default, fault is UnauthorizedAccessException ? "no permission" : "it vanished or is locked");
            return false;
        }
    }

    readonly record struct Entry(string Path, bool IsFolder, bool IsLink, FileStamp Stamp)
    {
        public string Name => System.IO.Path.GetFileName(Path);
    }
}
