using GuideGen.Site.Writing;

namespace GuideGen.Site.Bundling;

/// <summary>Writes one file as a whole: what stood there stays until the new one is complete, and what is not ours stays for good.</summary>
static class OwnFile
{
    /// <param name="path">Full path.</param>
    /// <param name="isOurs">Tells from the bytes of a file that is there whether an earlier run wrote it.</param>
    /// <exception cref="SiteRefusedException">Something else stands there.</exception>
    public static void Write(string path, byte[] bytes, Func<byte[], bool> isOurs)
    {
        if (Directory.Exists(path)) throw new SiteRefusedException($"{path} is a folder. Name a file.");
        if (File.Exists(path) && !isOurs(File.ReadAllBytes(path))) throw new SiteRefusedException($"{path} was not written by this tool and stays as it is. Name another file, or move it away.");
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var growing = path + ".guidegen-growing";
        File.WriteAllBytes(growing, bytes);
        File.Move(growing, path, overwrite: true);
    }
}
