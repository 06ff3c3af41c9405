using System.Text;
using GuideGen.Guide.Model;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Publishing;

/// <summary>What a host should say with each file: a line for the path, then indented lines of HTTP headers, as many static hosts read it.</summary>
static class Headers
{
    public const string Address = "_headers";

    /// <summary>
    /// All that a page may load, and from nowhere but the site (Content Security Policy Level 3). There is no script and no
    /// style inside a page; blocks of JSON-LD are data, which the policy does not concern.
    /// </summary>
    public const string PagePolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'";

    /// <summary>Who may frame a page can only be said by a host, not by the page.</summary>
    const string HostPolicy = PagePolicy + "; frame-ancestors 'none'";

    static readonly (string Path, string[] Lines)[] Rows =
    [
        ("*",
        [
            "Content-Security-Policy: " + HostPolicy,
            "Cross-Origin-Opener-Policy: same-origin",
            "Permissions-Policy: camera=(), geolocation=(), microphone=()",
            "Referrer-Policy: no-referrer",
            "X-Content-Type-Options: nosniff",
            "Cache-Control: no-cache",
        ]),
        (AssetNames.Folder + "*", ["! Cache-Control", "Cache-Control: public, max-age=31536000, immutable"]),
    ];

    public static SiteFile Of(GuideContent guide) => new(Address, () => Encoding.UTF8.GetBytes(Text(guide.Settings.Base?.Value.AbsolutePath ?? "/")));

    static string Text(string root) =>
        string.Concat(Rows.Select(r => $"{root}{r.Path}\n{string.Concat(r.Lines.Select(l => $"  {l}\n"))}\n")).TrimEnd('\n') + "\n";
}
