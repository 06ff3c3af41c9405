namespace GuideGen.Guide.Tests.Pillars;

/// <summary>The rules for codes against what is published of SAE J2012 / ISO 15031-6.</summary>
public sealed class CodeStructureTests
{
    const string Contents = "SAE J2012, contents pages of the 2002 and 2007 editions";
    const string Modern = "SAE J2012 as amended after 2007 (U3 under the standard)";

    const string Standard = "standard";
    const string Maker = "maker";
    const string Reserved = "reserved";

    /// <summary>Who owns a block of codes: first and last of its three-character groups.</summary>
    public static TheoryData<string, string, string, string> Owners => new()
    {
        { "P00", "P0F", Standard, Contents },
        { "P10", "P1F", Maker, Contents },
        { "P20", "P2F", Standard, Contents },
        { "P30", "P33", Maker, Contents },
        { "P34", "P3F", Standard, Contents },
        { "C00", "C0F", Standard, Contents },
        { "C10", "C1F", Maker, Contents },
        { "C20", "C2F", Maker, Contents },
        { "C30", "C3F", Reserved, Contents },
        { "B00", "B0F", Standard, Contents },
        { "B10", "B1F", Maker, Contents },
        { "B20", "B2F", Maker, Contents },
        { "B30", "B3F", Reserved, Contents },
        { "U00", "U0F", Standard, Contents },
        { "U10", "U1F", Maker, Contents },
        { "U20", "U2F", Maker, Contents },
        { "U30", "U3F", Standard, Modern },
    };

    [Theory, MemberData(nameof(Owners))]
    public void A_block_belongs_to_whom_the_standard_says(string first, string last, string owner, string source)
    {
        Assert.StartsWith("SAE J2012", source, StringComparison.Ordinal);
        var codes = Groups(first, last).SelectMany(g => new[] { g + "0A", g + "99", g + "FF" }).ToList();

        var rules = RulesByCode(codes);

        Assert.All(codes, code => Assert.Equal(owner, OwnerBy(rules.GetValueOrDefault(code))));
    }

    /// <summary>Codes that are printed with their two bytes in public places, or that a wrong rule of thumb gets wrong.</summary>
    [Theory]
    [InlineData("P0133", null, "manual of an interface chip, 43 01 33")]
    [InlineData("P0301", null, "question on Stack Overflow, 43 01 33 03 01")]
    [InlineData("P0143", null, "ISO 15031-5, figure 19")]
    [InlineData("U0073", null, "C0 73, network wiring")]
    [InlineData("U0100", null, "C1 00, no contact with the engine control unit")]
    [InlineData("B1000", "code-maker-unexplained", "90 00 with failure type 16")]
    [InlineData("B1234", "code-maker-unexplained", "92 34")]
    [InlineData("U1200", "code-maker-unexplained", "D2 00 in a public list of a battery control unit")]
    [InlineData("P11D8", "code-maker-unexplained", "11 D8 in the same list")]
    [InlineData("C200E", "code-maker-unexplained", "60 0E in a public list of a maker")]
    [InlineData("P1BB1", "code-maker-unexplained", "1B B1 in a public note, third and fourth character hexadecimal")]
    [InlineData("P2002", null, "not a maker's code, though its second character is 2 (P2 belongs to the standard)")]
    [InlineData("P3400", null, "not a maker's code, though its second character is 3 (P34 on belongs to the standard)")]
    [InlineData("U3003", null, "not reserved in current editions")]
    [InlineData("P00BD", null, "hexadecimal since about 2002")]
    [InlineData("P20EE", null, "hexadecimal since about 2002")]
    public void A_published_code_is_judged_by_its_owner(string code, string? rule, string source)
    {
        Assert.NotEmpty(source);

        Assert.Equal(rule, RulesByCode([code]).GetValueOrDefault(code));
    }

    /// <summary>From the structure of five characters in SAE J2012: letter, 0 to 3, three of 0-9 and A-F.</summary>
    [Theory]
    [InlineData("A0299")]
    [InlineData("D0299")]
    [InlineData("P4299")]
    [InlineData("P9299")]
    [InlineData("PA299")]
    [InlineData("P0G99")]
    [InlineData("P02G9")]
    [InlineData("P029G")]
    [InlineData("P029")]
    [InlineData("P02999")]
    [InlineData("P0299-00")]
    [InlineData("PO299")]
    [InlineData("Р0299")] // A Cyrillic letter in place of the P.
    [InlineData("P0٢99")] // An Arabic digit.
    public void What_the_structure_does_not_allow_is_no_code(string written) =>
        Assert.Equal("code-structure", RulesByCode([written]).GetValueOrDefault(written));

    static IEnumerable<string> Groups(string first, string last) =>
        from digit in "0123456789ABCDEF"
        where digit >= first[2] && digit <= last[2]
        select first[..2] + digit;

    static string OwnerBy(string? rule) => rule switch
    {
        null or "code-unassigned" => Standard,
        "code-maker-unexplained" => Maker,
        "code-reserved" => Reserved,
        _ => rule,
    };

    static Dictionary<string, string> RulesByCode(IEnumerable<string> codes)
    {
        const string page = "content/faults/hose-split.md";
        var written = string.Join(", ", codes.Select(c => $"{c}: rarely"));
        var text = BaseGuide.Text(page).Replace("{ P0299: usually, P1A42: sometimes }", $"{{ {written} }}", StringComparison.Ordinal);
        return BaseGuide.InspectWith(page, text).Where(f => f.Rule.Id.StartsWith("code-", StringComparison.Ordinal)).ToDictionary(f => f.About, f => f.Rule.Id);
    }
}
