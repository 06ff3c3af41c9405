using AngleSharp.Dom;
using GuideGen.Site.Planning;

namespace GuideGen.Site.Bundling;

/// <summary>Turns the links and names of one page into ones that hold when all pages are one.</summary>
/// <param name="address">The page they stand on.</param>
/// <param name="pages">Addresses of all pages that come along.</param>
/// <param name="site">Bytes by address, for pictures.</param>
sealed class InnerLinks(string address, IReadOnlySet<string> pages, IReadOnlyDictionary<string, byte[]> site)
{
    static readonly string[] Pointers = ["for", "headers", "aria-labelledby", "aria-describedby", "aria-controls"];

    static readonly Dictionary<string, string> MediaTypes = new(StringComparer.Ordinal)
    {
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".jpg"] = "image/jpeg",
        [".jpeg"] = "image/jpeg",
        [".webp"] = "image/webp",
        [".gif"] = "image/gif",
    };

    public string AnchorOfPage => AnchorOf(address);

    public void Apply(IElement element)
    {
        if (element.HasAttribute("id")) element.Id = Inner(address, element.Id!);
        foreach (var name in Pointers.Where(element.HasAttribute))
        {
            element.SetAttribute(name, string.Join(' ', element.GetAttribute(name)!.Split(' ').Select(id => Inner(address, id))));
        }

        if (element.GetAttribute("href") is { } href) Redirect(element, href);
        if (element.LocalName == "img") MoveIn(element);
    }

    /// <summary>A link to a page that does not come along becomes plain text.</summary>
    void Redirect(IElement element, string href)
    {
        if (IsOutside(href)) return;
        var parts = href.Split('#', 2);
        var target = parts[0].Length == 0 ? address : Resolve(parts[0]);
        if (pages.Contains(target)) element.SetAttribute("href", "#" + (parts is [_, { Length: > 0 } id] ? Uri.EscapeDataString(Inner(target, Uri.UnescapeDataString(id))) : AnchorOf(target)));
        else if (DataOf(target) is { } data) element.SetAttribute("href", data);
        else element.RemoveAttribute("href");
    }

    void MoveIn(IElement picture)
    {
        picture.RemoveAttribute("srcset");
        picture.RemoveAttribute("sizes");
        picture.SetAttribute("src", DataOf(Resolve(picture.GetAttribute("src") ?? "")) ?? "data:,");
    }

    string? DataOf(string target) =>
        site.TryGetValue(target, out var bytes) && MediaTypes.TryGetValue(Path.GetExtension(target).ToLowerInvariant(), out var type)
            ? $"data:{type};base64,{Convert.ToBase64String(bytes)}"
            : null;

    string Resolve(string relative)
    {
        var parts = address.Split('/')[..^1].ToList();
        foreach (var part in relative.Split('/').Select(Uri.UnescapeDataString))
        {
            if (part != "..") parts.Add(part);
            else if (parts.Count > 0) parts.RemoveAt(parts.Count - 1);
        }

        return string.Join('/', parts);
    }

    static bool IsOutside(string href) => href.StartsWith("//", StringComparison.Ordinal) || href.Split('/', '#', '?')[0].Contains(':', StringComparison.Ordinal);

    static string AnchorOf(string page) => page[..^".html".Length].Replace('/', '.');

    /// <summary>The skip link and its target keep their name: they stand in the frame, which is there once.</summary>
    static string Inner(string page, string id) => id == "_page" ? id : page == Addresses.Home ? "start." + id : $"{AnchorOf(page)}.{id}";
}
