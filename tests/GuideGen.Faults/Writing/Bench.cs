using GuideGen.Testing;

namespace GuideGen.Faults.Writing;

/// <summary>A small guide in two states, the site of each, and a folder in which one takes the other's place.</summary>
sealed class Bench : IDisposable
{
    /// <summary>A file of somebody else's in the site's folder.</summary>
    const string Foreign = "from-the-club.txt";

    readonly TempFolder temp = new();

    public Bench()
    {
        foreach (var state in new[] { "old", "new" }) CopyGuide(GuideOf(state));
        File.AppendAllText(Path.Combine(GuideOf("new"), "content", "parts", "charge-air-hose.md"), "\nIt also leaks at the cold end.\n");
        (Old, New) = (Made("old"), Made("new"));
    }

    public Dictionary<string, string> Old { get; }

    public Dictionary<string, string> New { get; }

    public string Site => temp.PathTo("places", "site");

    public string GuideOf(string state) => temp.PathTo(state);

    public string PathTo(string name) => temp.PathTo(name);

    public void LayForeign() => File.WriteAllText(Path.Combine(Site, Foreign), "ours");

    /// <summary>True if it lies in the site, or beside it where the next compile takes it from.</summary>
    public bool HasForeign() => Directory.EnumerateFiles(Path.GetDirectoryName(Site)!, Foreign, new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 }).Any();

    public bool HasForeignInPlace() => File.Exists(Path.Combine(Site, Foreign));

    /// <returns>old, new, none, or what is broken.</returns>
    public string State()
    {
        if (!Directory.Exists(Site)) return "none";
        var now = Bytes(Site);
        now.Remove(Foreign);
        if (IsSame(now, Old)) return "old";
        return IsSame(now, New) ? "new" : $"broken: {now.Count} files";
    }

    /// <summary>What lies beside the site, apart from what a compile keeps there for the next one.</summary>
    public IReadOnlyList<string> Leftovers() =>
        [.. Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(Site)!).Select(p => Path.GetFileName(p)).Where(n => n != "site" && !Kept.Contains(n))];

    /// <summary>Lets the next compile begin from nothing.</summary>
    public void Forget()
    {
        foreach (var name in Kept) File.Delete(Path.Combine(Path.GetDirectoryName(Site)!, name));
    }

    static readonly string[] Kept = [".site.guidegen-memory", ".site.guidegen-origins"];

    public static bool IsSame(Dictionary<string, string> one, Dictionary<string, string> other) =>
        one.Count == other.Count && one.All(f => other.TryGetValue(f.Key, out var hash) && hash == f.Value);

    public static Dictionary<string, string> Bytes(string folder) => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToDictionary(f => Path.GetRelativePath(folder, f), f => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f))));

    public void Dispose() => temp.Dispose();

    Dictionary<string, string> Made(string state)
    {
        var place = temp.PathTo("made-" + state);
        var (code, said) = Tool.Run(GuideOf(state), place);
        return code == 0 ? Bytes(place) : throw new InvalidOperationException(said);
    }

    static void CopyGuide(string to)
    {
        var from = Repository.PathTo("tests", "GuideGen.Site.Tests", "Fixture");
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
