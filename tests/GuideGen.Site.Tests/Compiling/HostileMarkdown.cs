namespace GuideGen.Site.Tests.Compiling;

/// <summary>Pages that try to become more than text, by way of each mark that Markdown has. From memory of what has deceived filters before.</summary>
static class HostileMarkdown
{
    /// <summary>The Markdown of a section, and the errors that it has to meet; none if it is drawn as harmless text.</summary>
    public static readonly (string Text, string Rules)[] Rows =
    [
        // Links to what is no page.
        .. Links().Select(target => ($"Look [here](<{target}>) now.", "link-scheme")),
        .. Links().Select(target => ($"Look [here][x] now.\n\n[x]: <{target}>", "link-scheme")),
        .. Links().Select(target => ($"See ![a hose](<{target}>) there.", "link-scheme")),
        .. Schemes.Select(scheme => ($"Look <{scheme}:x> now.", "link-scheme")),
        .. Schemes.Select(scheme => ($"Look [*here*]({scheme.ToUpperInvariant()}:x 'T') now.", "link-scheme")),
        ("[x](javascript&colon;alert(1))", "link-scheme"),
        ("[x](java&#115;cript&#x3a;alert(1))", "link-scheme"),
        ("[x](javascript\\:alert(1))", "link-scheme"),
        ("[x](javascript&#58;alert(1))", "link-scheme"),
        ("[![a hose](javascript:x)](javascript:y)", "link-scheme"),
        ("[x](<\u0001javascript:x>)", "text-control"),
        ("<\u0000script>x", "text-control"),
        ("See \u202Etpircsavaj\u202C now.", ""),
        ("![a hose](https://example.org/x.png)", "link-scheme"),
        ("![a hose](mailto:a@example.org)", "link-scheme"),
        ("[x](%6Aavascript:alert(1))", "link-scheme"),
        ("[x](javascript%3Aalert(1))", "link-broken"),
        ("[x](/etc/passwd)", "link-broken"),
        ("[x](../../../../etc/passwd)", "link-broken"),
        ("[x](..%2f..%2f..%2fetc%2fpasswd)", "link-broken"),
        ("[x](\\\\\\\\host\\\\share)", "link-broken"),
        ("![a hose](../../../secret.svg)", "image-missing"),
        ("![a hose](../images/%2e%2e/%2e%2e/x.svg)", "image-missing"),
        ("[x](#\"onclick=x)", "anchor-missing"),
        // Markup, which a guide's pages have none of.
        .. Markup().Select(html => (html, "")),
        .. Markup().Select(html => ($"Look {html} now.", "")),
        .. Markup().Select(html => ($"> - `{html}`\n\n    {html}\n\n```{html}\n{html}\n```", "")),
        .. Markup().Select(html => ($"| a | {html} |\n| --- | :-: |\n| {html} | b |\n\n### {html}", "")),
        // Words that leave their place.
        .. Quotes.Select(q => ($"[here](https://example.org/ {q}) and [there](read-me{q}.md", "")),
        .. Quotes.Select(q => ($"[here](https://example.org/?{q.Replace(' ', '+')})", "")),
        .. Quotes.Select(q => ($"![{q}](<../images/air path #1.svg>)", "image-missing")),
        .. Quotes.Select(q => ($"![{q}](<../images/air%20path%20%231.svg>)", "")),
        .. Quotes.Select(q => ($"~~~{q}\nx\n~~~\n\n### {q}", "")),
        .. Ids.Select(id => ($"### {id}\n\n#### {id}\n\nText.", "")),
    ];

    static string[] Quotes =>
    [
        "\"onmouseover=alert(1) x=\"", "'onmouseover=alert(1) x='", "\" style=\"position:fixed", "x\" class=\"signal danger\" y=\"", "onclick=`x`", "&quot; onclick=x", "&#34; onclick=x", "\\\" onclick=x", "\u2028onclick=x", "\"><img src=x onerror=alert(1)>",
    ];

    /// <summary>Headings that would like to be known to scripts, or to stand for a part of the frame.</summary>
    static string[] Ids => ["_page", "_offline", "GuideGen", "__proto__", "constructor", "location", "document", "\" id=\"_find", "../x", "#", "🚐", "%00", "İ", "ﬁ", "‮abc"];

    static IEnumerable<string> Markup() =>
    [
        "<script>alert(1)</script>", "</script><script>alert(1)</script>", "<img src=x onerror=alert(1)>", "<svg onload=alert(1)>", "<iframe src=https://example.org></iframe>", "<style>*{display:none}</style>", "<base href=https://example.org/>",
        "<a href=javascript:x onclick=x>x</a>", "<!-- --><script>x</script>", "<!--><img src=x>", "<![CDATA[<img src=x>]]>", "<?x <img src=x>?>", "<!DOCTYPE x>", "<details open ontoggle=x>", "&lt;img src=x onerror=x&gt;", "&#60;img src=x&#62;",
        "<p hidden>", "</main></body></html>", "<textarea>", "<plaintext>", "<template>", "<math><mi xlink:href=x>", "<form action=x><input name=_find>", "\uFF1Cimg src=x\uFF1E", "<scr\nipt>x",
    ];

    static string[] Schemes => ["javascript", "vbscript", "data", "file", "blob", "ftp", "tel", "about", "view-source", "intent"];

    static IEnumerable<string> Links() =>
    [
        .. Schemes.Select(s => s + ":x"), "JaVaScRiPt:alert(1)", "java\tscript:x", " javascript:x", "javascript\u00A0:x", "javascript://x/%0Aalert(1)", "data:text/html;base64,PHNjcmlwdD4=", "//example.org/x", "///example.org/x", "feed:javascript:x",
    ];
}
