namespace GuideGen.Guide.Tests.Hostile;

/// <summary>Names of files that a stranger may send: whatever cannot be an address on every system is refused by its name alone.</summary>
public sealed class HostileNameTests
{
    /// <summary>Names of devices that hold no file on some systems (Microsoft, 'Naming files, paths, and namespaces').</summary>
    static IEnumerable<string> Devices => ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(i => new[] { $"com{i}", $"lpt{i}" })];

    static readonly string[] NoAddresses =
    [
        "..", "...", ".", " ", "-", "--", "a--b", "-a", "a-", "a b", " a", "a ", "a.b", "a..b", "A", "aB", "CON", "a_b", "a+b", "a%2e%2e", "%2e%2e", "a%00", "a?b", "a#b", "a&b", "a=b",
        "a:b", "c:", "a|b", "a*b", "a\"b", "a'b", "a<b", "a>b", "<script>", "a\\b", "..\\x", "a~b", "~", "~root", "$x", "${x}", "$(x)", "`x`", "{{x}}", "a;b", "a,b", "a@b", "a!b", "a\tb",
        "a\nb", "a\u0000b", "a\u007Fb", "a\u00A0b", "a\u200Bb", "a\u202Eb", "a\uFEFFb", "a\u2028b", "é", "e\u0301", "ﬁ", "ａ", "а", "ϲon", "ı", "ß", "１", "٣", "²", "🚐", "a\uD800", "a\u00ADb", "ǆ", "K",
        "xn--a", "index.html", "__proto__",
    ];

    public static TheoryData<string> BadNames => new([.. NoAddresses, .. Devices, new string('a', GuideLimits.SlugLength + 1), new string('a', 255), new string('a', 10_000)]);

    [Theory, MemberData(nameof(BadNames))]
    public void A_page_whose_name_can_be_no_address_is_not_read(string name)
    {
        var findings = BaseGuide.InspectWith($"content/parts/{name}.md", BaseGuide.Text("content/parts/hose.md"));

        Assert.Contains("slug-form", findings.Select(f => f.Rule.Id));
    }

    public static TheoryData<string> GoodNames => new("a", "1", "a-b", "con1", "com10", "lpt", "nul-a", "index", "constructor", "tostring", new string('a', GuideLimits.SlugLength));

    [Theory, MemberData(nameof(GoodNames))]
    public void A_plain_name_is_taken_whatever_it_means_elsewhere(string name) =>
        Assert.Empty(BaseGuide.InspectWith($"content/parts/{name}.md", BaseGuide.Text("content/parts/hose.md")).Where(f => f.Rule.Id is not ("page-similar" or "name-similar" or "orphan")).Select(f => f.ToString()));

    /// <summary>None of these is a place of the guide, so none is ever opened for what is in it.</summary>
    public static TheoryData<string> BadPlaces => new(
        "../x.md", "content/../x.md", "content/../../etc/x.md", "/etc/passwd", "/content/parts/x.md", "C:/x.md", "\\\\host\\x.md", "content", "content/", "content/x.md", "content/parts",
        "content//x.md", "content/Parts/x.md", "CONTENT/parts/x.md", "content/parts.md/x.md", "content/pаrts/x.md", "content/parts\u0000/x.md", "content/parts /x.md", "content/./parts/x.md", "content/parts/x.html", "content/parts/x.MD",
        "content/parts/x.md.html", "content/parts/x.js", "content/trees/x.md", "content/parts/x.yml", "content/faults/x", "content/cases/x.json");

    [Theory, MemberData(nameof(BadPlaces))]
    public void A_file_at_no_place_of_the_guide_is_told_and_left_alone(string path)
    {
        var findings = BaseGuide.InspectWith(path, BaseGuide.Text("content/parts/hose.md"));

        Assert.Equal([$"{path}: file-unknown"], findings.Select(f => $"{f.Span.Path}: {f.Rule.Id}"));
    }

    public static TheoryData<string, string, string> Clashes => new()
    {
        { "slug-duplicate", "content/parts/hose.md", "content/parts/more/hose.md" },
        { "slug-duplicate", "content/faults/hose-split.md", "content/faults/a/b/c/hose-split.md" },
        { "image-clash", "content/images/hose.svg", "content/images/Hose.svg" },
        { "image-clash", "content/images/hose.svg", "content/images/HOSE.SVG" },
        { "image-clash", "content/images/a/x.svg", "content/images/A/x.svg" },
        { "image-clash", "content/images/caf\u00E9.svg", "content/images/cafe\u0301.svg" },
        { "image-clash", "content/images/\u212B.svg", "content/images/\u00C5.svg" },
        { "image-clash", "content/images/\uD800.svg", "content/images/\uDC00.svg" },
    };

    [Theory, MemberData(nameof(Clashes))]
    public void Two_files_that_some_systems_take_for_one_are_told(string rule, string one, string other)
    {
        var files = BaseGuide.Files();
        var content = files.TryGetValue(one, out var known) ? known : files["content/images/hose.svg"];
        (files[one], files[other]) = (content, content);

        Assert.Contains(rule, BaseGuide.Inspect(files).Select(f => f.Rule.Id));
    }
}
