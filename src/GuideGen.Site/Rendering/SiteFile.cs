namespace GuideGen.Site.Rendering;

/// <summary>A file of the site.</summary>
/// <param name="Address">Relative to the site's root, with forward slashes.</param>
/// <param name="Read">Makes its bytes; asked once, so that no stage holds the whole site.</param>
public sealed record SiteFile(string Address, Func<byte[]> Read)
{
    /// <summary>While its digest is the same, so are the bytes. Null for a file that is always made anew.</summary>
    public FileBasis? Basis { get; init; }

    /// <summary>False for a file of an edition in another language.</summary>
    public bool IsOfFirstEdition { get; init; } = true;
}

/// <summary>A file that speaks about all others, so it is made last.</summary>
/// <param name="Make">Makes its bytes from the SHA-256 of every other file, by address.</param>
public sealed record ClosingFile(string Address, Func<IReadOnlyDictionary<string, byte[]>, byte[]> Make);
