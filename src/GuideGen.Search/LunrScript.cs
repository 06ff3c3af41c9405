namespace GuideGen.Search;

/// <summary>The search library that the site carries: lunr.js, minified, as its package ships it.</summary>
public static class LunrScript
{
    /// <summary>The version whose serialised index the index builder writes; lunr warns when they differ.</summary>
    public const string Version = "2.3.9";

    public static string Text { get; } = Read("lunr.min.js");

    /// <summary>The terms lunr.js is given under; a site that carries the script carries them too.</summary>
    public static string Licence { get; } = Read("lunr.licence.txt");

    static string Read(string name)
    {
        using var stream = typeof(LunrScript).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
