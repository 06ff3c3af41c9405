namespace GuideGen.Site.Writing;

/// <summary>
/// The folder beside a site in which the next one grows. Whatever moment a compile is killed at, the site's folder
/// holds a whole site, and the next compile clears up what was left.
/// </summary>
sealed class StagingFolder
{
    /// <summary>Stands in the staging folder while its content is not whole.</summary>
    const string GrowingMark = ".growing";

    readonly string site;
    readonly string previous;
    readonly string claim;

    public StagingFolder(string site)
    {
        this.site = site;
        var (parent, name) = (System.IO.Path.GetDirectoryName(site)!, System.IO.Path.GetFileName(site));
        Path = System.IO.Path.Combine(parent, $".{name}.next");
        previous = System.IO.Path.Combine(parent, $".{name}.previous");
        claim = System.IO.Path.Combine(parent, $".{name}.claim");
    }

    public string Path { get; }

    public string PathOf(string address) => System.IO.Path.Combine(Path, address);

    /// <summary>Holds the site's folder for this compile until disposed.</summary>
    /// <exception cref="SiteRefusedException">Another compile holds it.</exception>
    public IDisposable Claim()
    {
        try
        {
            return new FileStream(claim, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException fault) when (File.Exists(claim) && fault is not FileNotFoundException)
        {
            throw new SiteRefusedException($"another compile is writing {site}. Wait until it has ended, or name another folder with --out.");
        }
    }

    /// <summary>Puts right what a killed compile left behind.</summary>
    public void Recover()
    {
        if (Directory.Exists(previous) && !Directory.Exists(site)) Directory.Move(previous, site);
        foreach (var left in new[] { previous, Path })
        {
            if (!Directory.Exists(left)) continue;
            if (!IsGrowing(left)) CarryOver(left);
            Directory.Delete(left, recursive: true);
        }
    }

    public void Begin()
    {
        Directory.CreateDirectory(Path);
        File.WriteAllBytes(PathOf(GrowingMark), []);
    }

    public void Drop() => Directory.Delete(Path, recursive: true);

    public void SwapIn()
    {
        File.Delete(PathOf(GrowingMark));
        if (!Directory.Exists(site))
        {
            Directory.Move(Path, site);
            return;
        }

        if (!FolderExchange.TryExchange(Path, site)) SwapByRenaming();
        CarryOver(Path);
        Drop();
    }

    /// <summary>For systems that cannot exchange two folders in one step: between the two moves the site is at its old place's name for a moment only.</summary>
    void SwapByRenaming()
    {
        Directory.Move(site, previous);
        Directory.Move(Path, site);
        Directory.Move(previous, Path);
    }

    static bool IsGrowing(string folder) => File.Exists(System.IO.Path.Combine(folder, GrowingMark));

    /// <summary>Moves what no compile wrote from an old site into the new one.</summary>
    void CarryOver(string old)
    {
        var ours = SiteManifest.ReadFrom(old);
        var everything = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 };
        foreach (var file in Directory.EnumerateFiles(old, "*", everything).ToList())
        {
            var address = System.IO.Path.GetRelativePath(old, file).Replace(System.IO.Path.DirectorySeparatorChar, '/');
            var target = System.IO.Path.Combine(site, address);
            if (ours.Has(address) || File.Exists(target)) continue;
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(target)!);
            File.Move(file, target);
        }
    }
}
