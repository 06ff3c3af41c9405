using GuideGen.Guide;

namespace GuideGen.Site.Writing;

/// <summary>
/// The folder beside a site in which the next one grows. Whatever moment a compile is killed at, the site's folder
/// holds a whole site, and the next compile clears up what was left.
/// </summary>
/// <remarks>
/// What is left is told by its name alone, since a folder changes its name in one step and its content in many:
/// <c>growing</c> and <c>discarded</c> hold nothing of value; <c>next</c> is a whole new site or, after the exchange,
/// the old one with what others laid into it; <c>previous</c> is the old one.
/// </remarks>
sealed class StagingFolder
{
    readonly string site;
    readonly string parent;
    readonly string next;
    readonly string previous;
    readonly string discarded;
    readonly string claim;

    public StagingFolder(string site)
    {
        this.site = site;
        parent = Path.GetDirectoryName(site)!;
        (Growing, next, previous, discarded, claim) = (Beside("growing"), Beside("next"), Beside("previous"), Beside("discarded"), Beside("claim"));
    }

    public string Growing { get; }

    /// <summary>See <see cref="SiteOrigins"/>; not part of the staging, and kept.</summary>
    public string Origins => Beside("origins");

    /// <summary>See <see cref="Guide.Keeping.KeptMemory"/>; not part of the staging, and kept.</summary>
    public string Memory => Beside("memory");

    /// <returns>Nothing if there is no such file, or it cannot be read.</returns>
    public static byte[] ReadKept(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : [];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Puts something in the place of a kept file, whole or not at all. It only saves time, so it may also fail.</summary>
    public void TryKeep(string path, Action<Stream> write)
    {
        try
        {
            using (var growing = File.Create(Beside("growing-file"))) write(growing);
            File.Move(Beside("growing-file"), path, overwrite: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The volume is full, or somebody holds the file: the next compile does more by itself.
        }
    }

    public string PathOf(string address) => Path.Combine(Growing, address);

    /// <summary>Holds the site's folder for this compile until disposed.</summary>
    /// <exception cref="SiteRefusedException">Another compile holds it.</exception>
    /// <exception cref="IOException">Nothing can be written beside the site.</exception>
    public IDisposable Claim()
    {
        try
        {
            Directory.CreateDirectory(parent);
            return new FileStream(claim, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException) when (File.Exists(claim))
        {
            throw new SiteRefusedException($"another compile is writing {site}. Wait until it has ended, or name another folder with --out.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new IOException($"nothing can be written in {parent}, where the site grows before it goes into its place: {fault.Message} Check the permissions, or name another folder with --out.", fault);
        }
    }

    /// <summary>Puts right what a killed compile left behind.</summary>
    public void Recover()
    {
        foreach (var old in new[] { previous, next }.Where(Directory.Exists))
        {
            if (Directory.Exists(site)) Retire(old, SiteManifest.ReadFrom(old));
            else Directory.Move(old, site);
        }

        foreach (var left in new[] { Growing, discarded }.Where(Directory.Exists)) Directory.Delete(left, recursive: true);
        File.Delete(Beside("growing-file"));
    }

    public void Begin() => Directory.CreateDirectory(Growing);

    public void Drop() => Directory.Delete(Growing, recursive: true);

    /// <param name="ours">What compiles wrote into the old site.</param>
    public void SwapIn(SiteManifest ours)
    {
        Directory.Move(Growing, next);
        if (!Directory.Exists(site))
        {
            Directory.Move(next, site);
            return;
        }

        var old = FolderExchange.TryExchange(next, site) ? next : SwapByRenaming();
        Retire(old, ours.MovedTo(old));
    }

    /// <summary>For systems that cannot exchange two folders in one step: for a moment the site's name stands for nothing.</summary>
    /// <returns>Where the old site is now.</returns>
    string SwapByRenaming()
    {
        Directory.Move(site, previous);
        try
        {
            Directory.Move(next, site);
        }
        catch
        {
            Directory.Move(previous, site);
            throw;
        }

        return previous;
    }

    /// <summary>Moves what no compile wrote from an old site into the new one, and does away with the rest.</summary>
    void Retire(string old, SiteManifest ours)
    {
        new ForeignFiles(old, ours).MoveTo(site);
        if (Directory.Exists(discarded)) Delete(discarded);
        Directory.Move(old, discarded);
        Delete(discarded);
    }

    static void Delete(string folder)
    {
        SideBySide.ForEach(Directory.EnumerateDirectories(folder), SideBySide.AsManyAsThereAre, inner => Directory.Delete(inner, recursive: true));
        Directory.Delete(folder, recursive: true);
    }

    string Beside(string state) => Path.Combine(parent, $".{Path.GetFileName(site)}.guidegen-{state}");
}
