using System.Text;

namespace GuideGen.Guide.Tests.Hostile;

/// <summary>Pictures that act, load, grow, or are none.</summary>
public sealed class HostilePictureTests
{
    const string Head = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 9 9\">";

    public static TheoryData<string, string> Drawings => new()
    {
        { "<script>alert(1)</script>", "image-unsafe" },
        { "<SCRIPT/>", "image-unsafe" },
        { "<x:script xmlns:x=\"http://www.w3.org/2000/svg\"/>", "image-unsafe" },
        { "<g onload=\"x\"/>", "image-unsafe" },
        { "<g ONCLICK=\"x\"/>", "image-unsafe" },
        { "<foreignObject><p xmlns=\"http://www.w3.org/1999/xhtml\">x</p></foreignObject>", "image-unsafe" },
        { "<g><div xmlns=\"http://www.w3.org/1999/xhtml\"/></g>", "image-unsafe" },
        { "<a href=\"javascript:alert(1)\"><path/></a>", "image-unsafe" },
        { "<a xlink:href=\" java&#9;script:x\"><path/></a>", "image-unsafe" },
        { "<a href=\"https://example.org/\"><path/></a>", "image-unsafe" },
        { "<a href=\"#a\"><set attributeName=\"href\" to=\"javascript:x\"/></a>", "image-unsafe" },
        { "<animate attributeName=\"xlink:href\" values=\"javascript:x\"/>", "image-unsafe" },
        { "<image href=\"//example.org/x.png\"/>", "image-unsafe" },
        { "<image href=\"data:text/html,x\"/>", "image-unsafe" },
        { "<image href=\"data:image/svg+xml,x\"/>", "image-unsafe" },
        { "<use href=\"x.svg#a\"/>", "image-unsafe" },
        { "<feImage href=\"/x.png\"/>", "image-unsafe" },
        { "<g xml:base=\"https://example.org/\"><use href=\"#a\"/></g>", "image-unsafe" },
        { "<style>@import 'https://example.org/x.css';</style>", "image-unsafe" },
        { "<style>@imp<!-- -->ort 'https://example.org/x.css';</style>", "image-unsafe" },
        { "<style>@imp<![CDATA[ort 'https://example.org/x.css';]]></style>", "image-unsafe" },
        { "<style>@\\69mport 'x';</style>", "image-unsafe" },
        { "<style>g { fill: image-set('https://example.org/x.png' 1x) }</style>", "image-unsafe" },
        { "<style>g { cursor: URL( https://example.org/x ) }</style>", "image-unsafe" },
        { "<style>@font-face { src: url(https://example.org/x) }</style>", "image-unsafe" },
        { "<g style=\"fill: url('//example.org/x#a')\"/>", "image-unsafe" },
        { "<g filter=\"url(x.svg#a)\"/>", "image-unsafe" },
        { "<iframe/>", "image-unsafe" },
        { "<video/>", "image-unsafe" },
        { "<handler/>", "image-unsafe" },
        { "<?php x ?>", "image-unsafe" },
        { Repeated(1, _ => Copies(2, 30)), "image-unsafe" },
        { Repeated(1, _ => Copies(10, 8)), "image-unsafe" },
        { "<g id=\"a\"><use href=\"#a\"/><use href=\"#a\"/></g>", "image-unsafe" },
        { "<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\"><use href=\"#a\"/></g>", "image-unsafe" },
        { "<pattern id=\"a\"><path fill=\"url(#a)\"/></pattern>", "image-unsafe" },
        { "<style>path { fill: url(#a) }</style><pattern id=\"a\"><path/></pattern>", "image-unsafe" },
        { "<style>.b { filter: url(#a) } .a { filter: url(#b) }</style><g id=\"a\" class=\"b\"/><g id=\"b\" class=\"a\"/>", "image-unsafe" },
        { "<style>@media all { g, .x > * { fill: url( '#a' ) } }</style><pattern id=\"a\">" + Repeated(500, _ => "<path/>") + "</pattern>" + Repeated(500, _ => "<g/>"), "image-unsafe" },
        { "<style>/* { */ #x /* } */ { mask: url(#a) }</style><pattern id=\"a\">" + Repeated(50_000, _ => "<path/>") + "</pattern><g id=\"x\"/>" + Repeated(2, _ => "<g style=\"fill: url(#a)\"/>"), "image-unsafe" },
        { "<g fill=\"url(#a)\">" + Repeated(500, _ => "<path/>") + "</g><pattern id=\"a\">" + Repeated(500, _ => "<path/>") + "</pattern>", "image-unsafe" },
        { "<style>:root { --p: url(#a) } path { fill: var(--p) }</style>" + Repeated(500, _ => "<path/>") + "<pattern id=\"a\">" + Repeated(500, _ => "<rect/>") + "</pattern>", "image-unsafe" },
        { Repeated(100_000, i => $"<use id=\"n{i}\" href=\"#n{i + 1}\"/>"), "image-unsafe" },
        { Repeated(300, _ => "<g>") + Repeated(300, _ => "</g>"), "image-unsafe" },
        { "<g", "image-unreadable" },
        { "&x;", "image-unreadable" },
        { "\u0001", "image-unreadable" },
        { "<a href=\"#a\" id=\"a\"/>", "" },
        { Copies(10, 4), "" },
        { Repeated(50_000, i => $"<path id=\"p{i}\"/>"), "" },
        { "<linearGradient id=\"a\"/>" + Repeated(20_000, _ => "<path fill=\"url(#a)\"/>"), "" },
        { "<style>.a { fill: url(#g) } .b path { clip-path: url(#c) }</style><linearGradient id=\"g\"><stop/><stop/></linearGradient><clipPath id=\"c\"><rect/></clipPath>" + Repeated(5_000, _ => "<path class=\"a\"/>"), "" },
        { "<g fill=\"url(#g)\" filter=\"url(#f)\">" + Repeated(9_000, _ => "<path/>") + "</g><radialGradient id=\"g\"><stop/><stop/></radialGradient><filter id=\"f\">" + Repeated(40, _ => "<feBlend/>") + "</filter>", "" },
        { "<style>@imp<!-- -->osing</style><title>importing and imaging</title>", "" },
        { "<image href=\"data:image/png;base64,AAAA\"/>", "" },
    };

    [Theory, MemberData(nameof(Drawings))]
    public void A_drawing_that_could_act_load_or_grow_is_refused_and_no_other(string content, string rule) =>
        Assert.Equal(rule, string.Join(", ", Found("x.svg", Encoding.UTF8.GetBytes(Head + content + "</svg>"))));

    public static TheoryData<string, byte[], string> Files => new()
    {
        { "x.svg", "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg xmlns=\"http://www.w3.org/2000/svg\">&a;</svg>"u8.ToArray(), "image-unreadable" },
        { "x.svg", Encoding.UTF8.GetBytes("<!DOCTYPE s [<!ENTITY a \"x\">" + Repeated(9, i => $"<!ENTITY a{i} \"&a{i - 1};&a{i - 1};\">") + "]><svg xmlns=\"http://www.w3.org/2000/svg\">&a8;</svg>"), "image-unreadable" },
        { "x.svg", "<svg/>"u8.ToArray(), "image-unreadable" },
        { "x.svg", [0x1F, 0x8B, 8, 0], "image-unreadable" },
        { "x.svg", Encoding.Unicode.GetBytes("\uFEFF" + Head + "</svg>"), "image-unreadable" },
        { "x.svg", [], "image-unreadable" },
        { "x.png", [], "image-unreadable" },
        { "x.png", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"u8.ToArray(), "image-unreadable" },
        { "x.png", "GIF89a"u8.ToArray(), "image-unreadable" },
        { "x.png", Png(100_000, 100_000), "image-large" },
        { "x.png", Png(int.MaxValue, int.MaxValue), "image-large" },
        { "x.png", Png(-1, 5), "image-unreadable" },
        { "x.png", Png(0, 5), "image-unreadable" },
        { "x.jpg", Jpeg(65_535, 65_535), "image-large" },
        { "x.jpg", Jpeg(0, 10), "image-unreadable" },
        { "x.jpg", [0xFF, 0xD8, .. Enumerable.Repeat((byte)0xFF, 100_000)], "image-unreadable" },
        { "x.jpg", [0xFF, 0xD8, 0xFF, 0xE1, 0xFF, 0xFF, 0x45], "image-unreadable" },
        { "x.webp", [.. "RIFF\0\0\0\0WEBPVP8X\n\0\0\0\0\0\0\0"u8, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0], "image-large" },
        { "x.webp", [.. "RIFF\0\0\0\0WEBPVP8Z"u8, .. new byte[30]], "image-unreadable" },
        { "x.gif", "GIF89a"u8.ToArray(), "image-kind" },
        { "x.html", "<script>x</script>"u8.ToArray(), "image-kind" },
        { "x.svgz", [0x1F, 0x8B], "image-kind" },
        { "x", [1], "image-kind" },
        { "x.png", new byte[(GuideLimits.PictureMebibytes << 20) + 1], "image-large" },
    };

    [Theory, MemberData(nameof(Files))]
    public void A_file_that_is_no_picture_or_too_large_a_one_is_refused_by_its_head(string name, byte[] bytes, string rule) =>
        Assert.Equal([rule], Found(name, bytes));

    static IEnumerable<string> Found(string name, byte[] bytes) => BaseGuide.InspectWith("content/images/" + name, bytes).Select(f => f.Rule.Id).Where(r => r != "file-unused");

    static string Repeated(int count, Func<int, string> text) => string.Concat(Enumerable.Range(0, count).Select(text));

    /// <summary>Pieces of which each uses the former several times.</summary>
    static string Copies(int times, int levels) => "<path id=\"l0\"/>" + Repeated(levels, i => $"<g id=\"l{i + 1}\">{Repeated(times, _ => $"<use href=\"#l{i}\"/>")}</g>");

    static byte[] Png(int width, int height) => [0x89, .. "PNG\r\n\u001a\n"u8, 0, 0, 0, 13, .. "IHDR"u8, .. Big(width), .. Big(height), 8, 6, 0, 0, 0, 0, 0, 0, 0];

    static byte[] Big(int number) => [(byte)(number >> 24), (byte)(number >> 16), (byte)(number >> 8), (byte)number];

    static byte[] Jpeg(int width, int height) => [0xFF, 0xD8, 0xFF, 0xC0, 0, 17, 8, (byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width, 3, .. new byte[12]];
}
