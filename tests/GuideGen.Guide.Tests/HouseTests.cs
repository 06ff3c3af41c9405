using System.Globalization;
using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Tests.Rows;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

/// <summary>What holds for the whole room, whoever adds to it.</summary>
public sealed class HouseTests
{
    static readonly Lazy<List<string>> First = new(Everything);

    static readonly Type[] Types = typeof(GuideLoader).Assembly.GetExportedTypes();

    public static TheoryData<Rule> EveryRule => new(Rules.All);

    [Theory, MemberData(nameof(EveryRule))]
    public void A_rule_has_a_plain_id_a_title_and_a_message(Rule rule)
    {
        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)+$", rule.Id);
        Assert.Matches("^[A-Z].*[^.]$", rule.Title);
        Assert.Matches(@"[.?]$", rule.Message);
        Assert.Matches(@"([.:?]|\{\d\})$", rule.Hint);
        Assert.Single(Rules.All, r => r.Id == rule.Id);
    }

    [Theory, MemberData(nameof(EveryRule))]
    public void The_hint_of_a_rule_asks_for_no_fact_beyond_those_of_the_message_by_more_than_one(Rule rule)
    {
        var facts = Regex.Matches(rule.Message + rule.Hint, @"\{(\d)\}").Select(m => m.Groups[1].Value[0] - '0').Distinct().Order();

        Assert.Equal(Enumerable.Range(0, facts.Count()), facts);
    }

    [Fact]
    public void Every_rule_of_the_book_is_listed() =>
        Assert.Equal(typeof(Rules).GetFields().Count(f => f.FieldType == typeof(Rule)), Rules.All.Length);

    [Fact]
    public void What_keeps_a_page_from_being_read_or_rendered_cannot_be_dismissed() =>
        Assert.Equal(
            ["case-duplicate", "case-personal", "case-sign-unlisted", "case-variant", "code-loose", "code-meaning", "code-reserved", "code-structure", "code-unassigned", "hazard-undeclared", "hazard-unmet", "link-outside", "page-similar", "page-stale", "part-spelling", "section-missing", "section-order", "tree-answer-single", "tree-cannot-tell", "tree-check-repeated", "tree-drive-on", "tree-fault-missed", "tree-grave-first", "tree-leaf-symptom"],
            Rules.All.Where(r => r.CanBeDismissed).Select(r => r.Id));

    [Fact]
    public void Every_value_of_every_enum_has_a_word_of_its_own()
    {
        AssertWords<ContentKind>(NameKinds.Word);
        AssertWords<ContentKind>(NameKinds.Folder);
        AssertWords<NameKind>(NameKinds.Word);
        AssertWords<DriveAdvice>(DriveWords.Key);
        AssertWords<SignalWord>(SignalWords.Key);
        AssertWords<Severity>(SeverityWords.Key);
    }

    [Theory]
    [InlineData(typeof(CodeState), "unknown, pending, confirmed, permanent, history")]
    [InlineData(typeof(CodeScan), "unknown, engine, all")]
    [InlineData(typeof(CodesAfter), "unread, none, pending, permanent, back")]
    [InlineData(typeof(ProofEvidence), "none, measured, swapped-back")]
    [InlineData(typeof(SignalCount), "strongest, shared, joint")]
    [InlineData(typeof(UnitSystem), "metric, imperial")]
    [InlineData(typeof(FlowPath), "intake-air, exhaust, recirculation, reductant, fuel, coolant, current, signals, cabin-air, drive-line, brakes")]
    [InlineData(typeof(Sense), "lamp, starting, driving, feel, hear, see, smell")]
    [InlineData(typeof(ExampleForm), "lines, change, whole, removed, told")]
    public void An_enum_that_is_only_read_has_a_word_for_each_value(Type type, string words)
    {
        var names = Enum.GetNames(type).Select(Hyphenated).Order(StringComparer.Ordinal);

        Assert.Equal(words.Split(", ").Order(StringComparer.Ordinal), names);
        Assert.Contains(type, Types.Where(t => t.IsEnum));
    }

    [Fact]
    public void No_enum_is_left_out_of_these_tests()
    {
        Type[] covered =
        [
            typeof(ContentKind), typeof(NameKind), typeof(DriveAdvice), typeof(SignalWord), typeof(Severity),
            typeof(CodeScan), typeof(CodeState), typeof(CodesAfter), typeof(ProofEvidence), typeof(Sense), typeof(SignalCount), typeof(ExampleForm), typeof(UnitSystem), typeof(FlowPath),
        ];

        Assert.Equal(covered.Select(t => t.Name).Order(StringComparer.Ordinal), Types.Where(t => t.IsEnum).Select(t => t.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_class_is_sealed_static_or_abstract() =>
        Assert.Empty(typeof(GuideLoader).Assembly.GetTypes().Where(t => t is { IsClass: true, IsSealed: false, IsAbstract: false } && !t.Name.Contains('<', StringComparison.Ordinal)).Select(t => t.FullName));

    [Fact]
    public void A_guide_that_is_loaded_twice_has_the_same_findings() => Assert.Equal(First.Value, Everything());

    [Theory, InlineData("tr-TR"), InlineData("de-DE"), InlineData("ar-SA")]
    public void Findings_do_not_depend_on_the_culture(string culture)
    {
        var expected = First.Value;
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = new CultureInfo(culture);

            Assert.Equal(expected, Everything());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.DefaultThreadCurrentCulture = null;
        }
    }

    /// <summary>What all rows find, each inspected anew.</summary>
    static List<string> Everything() => [.. Tries.Some(RowFile.All).Select(r => RowFile.Print(BaseGuide.Inspect(r.Overlay(LineEnding.All[0]))))];

    static void AssertWords<T>(Func<T, string> word)
        where T : struct, Enum
    {
        var words = Enum.GetValues<T>().Select(word).ToList();
        Assert.Equal(words.Count, words.Distinct().Count());
        Assert.All(words, w => Assert.Matches("^[a-z]+(-[a-z]+)*$", w));
        Assert.Throws<ArgumentOutOfRangeException>(() => word((T)Enum.ToObject(typeof(T), 99)));
    }

    static string Hyphenated(string name) => Regex.Replace(name, "(?<=[a-z])([A-Z])", "-$1").ToLowerInvariant();
}
