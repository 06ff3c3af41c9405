namespace GuideGen.Testing;

/// <summary>
/// Compares files byte by byte with a folder of expected ones. What differs is kept beside the expected file as
/// <c>name.received.ext</c>; building with <c>-p:AcceptGolden=true</c> takes all that is received as expected.
/// </summary>
public static class Golden
{
    const string Received = ".received";

    static bool IsAccepting { get; } = Repository.Said("AcceptGolden") == "true";

    /// <param name="folder">Full path of the folder of expected files.</param>
    /// <param name="actual">By path in the folder, with forward slashes.</param>
    /// <returns>What differs, one sentence a file; nothing if all is as expected.</returns>
    public static IReadOnlyList<string> Differences(string folder, IReadOnlyDictionary<string, byte[]> actual)
    {
        if (IsAccepting) Accept(folder, actual);
        RemoveReceived(folder);
        var expected = PathsIn(folder).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. actual.OrderBy(a => a.Key, StringComparer.Ordinal).Select(a => Difference(folder, a.Key, a.Value)).OfType<string>(),
            .. expected.Except(actual.Keys).Order(StringComparer.Ordinal).Select(path => $"{path} is expected but was not made"),
        ];
    }

    static string? Difference(string folder, string path, byte[] bytes)
    {
        var file = Path.Combine(folder, path);
        var isThere = File.Exists(file);
        if (isThere && bytes.AsSpan().SequenceEqual(File.ReadAllBytes(file))) return null;
        var received = Path.ChangeExtension(file, Received + Path.GetExtension(file));
        Write(received, bytes);
        return isThere ? $"{path} differs, see {Path.GetFileName(received)}" : $"{path} is new, see {Path.GetFileName(received)}";
    }

    static void Accept(string folder, IReadOnlyDictionary<string, byte[]> actual)
    {
        foreach (var path in PathsIn(folder).Where(p => !actual.ContainsKey(p)).ToList()) File.Delete(Path.Combine(folder, path));
        foreach (var (path, bytes) in actual) Write(Path.Combine(folder, path), bytes);
    }

    static void RemoveReceived(string folder)
    {
        if (!Directory.Exists(folder)) return;
        foreach (var file in Directory.EnumerateFiles(folder, $"*{Received}.*", SearchOption.AllDirectories).ToList()) File.Delete(file);
    }

    static IEnumerable<string> PathsIn(string folder) => Directory.Exists(folder)
        ? Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
        : [];

    static void Write(string file, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllBytes(file, bytes);
    }
}
