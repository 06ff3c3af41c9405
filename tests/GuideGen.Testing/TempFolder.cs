namespace GuideGen.Testing;

/// <summary>A folder of a test's own, gone when the test has ended.</summary>
public sealed class TempFolder : IDisposable
{
    readonly string path = Directory.CreateTempSubdirectory("guidegen-").FullName;

    public string PathTo(params string[] parts) => Path.Combine([path, .. parts]);

    /// <summary>Writes a file, with the folders it needs.</summary>
    /// <returns>Its full path.</returns>
    public string Write(string name, string text)
    {
        var file = PathTo(name);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
        return file;
    }

    public void Dispose() => Directory.Delete(path, recursive: true);
}
