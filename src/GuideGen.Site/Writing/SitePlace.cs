using GuideGen.Guide.Loading;

namespace GuideGen.Site.Writing;

/// <summary>Where the site of a guide may go: anywhere but over the guide.</summary>
public static class SitePlace
{
    /// <param name="guide">The full path of the guide's folder.</param>
    /// <param name="wanted">The full path of the folder for the site.</param>
    /// <returns>The folder with its links followed, so that a link to it stays a link.</returns>
    /// <exception cref="SiteRefusedException">A site there would replace the guide, or become part of it.</exception>
    public static string Choose(string guide, string wanted)
    {
        var (home, place) = (RealPath.Of(guide), Path.TrimEndingDirectorySeparator(RealPath.Of(wanted)));
        return WhyNot(home, place) is { } why
            ? throw new SiteRefusedException($"the site cannot go into {wanted}: {why}. Name another folder with --out.")
            : place;
    }

    static string? WhyNot(string guide, string place)
    {
        if (Path.GetDirectoryName(place) is null) return "it is the root of the volume";
        if (File.Exists(place)) return "it is a file";
        if (RealPath.IsWithin(guide, place)) return guide == place ? "it is the guide's own folder" : "the guide lies in it";
        if (RealPath.IsWithin(place, Path.Combine(guide, "content"))) return "it lies in the guide's content, where it would be read as part of the guide";
        return File.Exists(Path.Combine(place, GuideLoader.SettingsFile)) ? $"it has a {GuideLoader.SettingsFile}, so it is a guide itself" : null;
    }
}
