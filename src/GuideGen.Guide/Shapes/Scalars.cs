using System.Globalization;
using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Shapes;

/// <summary>A single value that a small function understands.</summary>
/// <param name="constraint">A JSON Schema that allows the same values.</param>
/// <param name="example">A good value, as an author writes it.</param>
public sealed class ScalarShape<T>(string expected, Func<string, (bool IsRead, T Value)> read, string constraint, string example) : Shape<Located<T>>
{
    public override string Expected { get; } = expected;

    /// <summary>A sentence more for writers; empty if there is none.</summary>
    public string Note { get; init; } = "";

    public override Outline Outline => new ValueOutline(Expected, constraint, example) { Note = Note };

    public override bool TryRead(YamlNode node, Binding binding, out Located<T> value)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar) return Refuse(node, binding, out value);
        var (isRead, inner) = read(scalar.Value.Trim());
        if (!isRead) return Refuse(node, binding, out value);
        value = new Located<T>(inner, scalar.Span);
        return true;
    }
}

/// <summary>A name or a sentence.</summary>
/// <param name="isWording">True for words that readers read.</param>
public sealed class TextShape(int longest, bool isWording) : Shape<Located<string>>
{
    public override string Expected => "text";

    public override string Several => "texts";

    public override Outline Outline { get; } = new ValueOutline("text", Constraints.Text, "A sentence in plain words", isWording);

    public override bool TryRead(YamlNode node, Binding binding, out Located<string> value)
    {
        value = default;
        if (node is not YamlScalar { IsEmpty: false } scalar || string.IsNullOrWhiteSpace(scalar.Value)) return Refuse(node, binding, out value);
        var text = scalar.Value.Trim();
        value = new Located<string>(text, scalar.Span);
        if (text.Length > longest) binding.Findings.Add(Rules.ValueType.At(scalar.Span, $"text of at most {longest} characters", $"{text.Length}"));
        return text.Length <= longest;
    }
}

/// <summary>One word of a fixed list; the nearest one is suggested.</summary>
public sealed class WordShape<T>(IReadOnlyDictionary<string, T> words) : Shape<Located<T>>
{
    public override string Expected => "one of " + string.Join(", ", words.Keys);

    public override Outline Outline { get; } = new ValueOutline("one of " + string.Join(", ", words.Keys), Constraints.OneOf(words.Keys), words.Keys.First());

    public override bool TryRead(YamlNode node, Binding binding, out Located<T> value)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar) return Refuse(node, binding, out value);
        var isKnown = words.TryGetValue(scalar.Value, out var inner);
        value = new Located<T>(inner!, scalar.Span);
        if (!isKnown)
        {
            var question = NearestName.Question(scalar.Value, words.Keys);
            binding.Findings.Add(Rules.ValueWord.At(scalar.Span, scalar.Value, Expected, question));
        }

        return isKnown;
    }
}

/// <summary>The name of something else in the guide.</summary>
public sealed class NameShape(NameKind kind) : Shape<Located<string>>
{
    public override string Expected => $"the name of a {NameKinds.Word(kind)}";

    public override string Several => $"names of {NameKinds.Word(kind)}s";

    public override Outline Outline { get; } = new ValueOutline(
        $"the name of a {NameKinds.Word(kind)}", """{ "type": ["string", "number", "boolean"] }""", Examples[kind])
    { Names = kind };

    static readonly Dictionary<NameKind, string> Examples = new()
    {
        [NameKind.Fault] = "charge-air-hose-split",
        [NameKind.Check] = "charge-air-pressure-test",
        [NameKind.Symptom] = "reduced-power",
        [NameKind.Part] = "charge-air-hose",
        [NameKind.Task] = "clear-the-codes",
        [NameKind.Tree] = "reduced-power",
        [NameKind.Variant] = "w20d",
        [NameKind.System] = "air",
        [NameKind.Setup] = "undertray-off",
        [NameKind.Hazard] = "hot-parts",
    };

    public override bool TryRead(YamlNode node, Binding binding, out Located<string> value)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar) return Refuse(node, binding, out value);
        value = new Located<string>(scalar.Value, scalar.Span);
        binding.Refer(kind, value);
        return true;
    }
}

/// <summary>A trouble code of five characters (SAE J2012 / ISO 15031-6).</summary>
public sealed class CodeShape : Shape<Located<TroubleCode>>
{
    public override string Expected => "a trouble code such as P0299";

    public override Outline Outline { get; } = new ValueOutline(
        "a trouble code such as P0299", """{ "type": "string", "pattern": "^(?!P0000$)[PCBU][0-3][0-9A-F]{3}$" }""", "P0299");

    public override bool TryRead(YamlNode node, Binding binding, out Located<TroubleCode> value)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar) return Refuse(node, binding, out value);
        var isCode = TroubleCode.TryParse(scalar.Value, out var code) && scalar.Value == code.ToString() && !code.IsEmptySlot;
        if (!isCode) binding.Findings.Add(CodeFindings.NotACode(new Located<string>(scalar.Value, scalar.Span)));
        value = new Located<TroubleCode>(code, scalar.Span);
        return isCode;
    }
}

/// <summary>The single values of a guide.</summary>
public static class Scalars
{
    public static Shape<Located<string>> Text { get; } = new TextShape(GuideLimits.LineLength, isWording: true);

    /// <summary>Text that stands for something and is not said otherwise in another language: a unit, a step of a tree, the name of a rule.</summary>
    public static Shape<Located<string>> Mark { get; } = new TextShape(GuideLimits.LineLength, isWording: false);

    /// <summary>A name that other files and addresses use.</summary>
    public static Shape<Located<string>> Key { get; } = new ScalarShape<string>(
        "a key of lower-case letters, digits and single hyphens", t => (SlugForm.IsPlain(t), t), SlugForm.Constraint, "first");

    public static Shape<Located<bool>> Flag { get; } = new WordShape<bool>(
        new Dictionary<string, bool> { ["true"] = true, ["false"] = false });

    public static Shape<Located<DateOnly>> Date { get; } = new ScalarShape<DateOnly>(
        "a date such as 2024-05-31",
        t => (DateOnly.TryParseExact(t, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d), d),
        """{ "type": "string", "format": "date", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }""",
        "2024-05-31");

    public static Shape<Located<MoneyRange>> Price { get; } = new ScalarShape<MoneyRange>(
        "a price such as 35 or 35-80",
        t => (MoneyRange.TryParse(t, out var r), r),
        Constraints.NumberOr("\"minimum\": 0, \"exclusiveMaximum\": 1000000", $"{Constraints.Amount}( *- *{Constraints.Amount})?"),
        "35-80");

    public static Shape<Located<YearRange>> Years { get; } = new ScalarShape<YearRange>(
        "years such as 2012-2022",
        t => (YearRange.TryParse(t, out var r), r),
        Constraints.NumberOr("\"multipleOf\": 1, \"minimum\": 1900, \"maximum\": 2100", $"{Constraints.Year}( *- *{Constraints.Year})?"),
        "2012-2022");

    public static Shape<Located<Likelihood>> Likelihood { get; } = new ScalarShape<Likelihood>(
        "always, usually, sometimes, rarely or a number from 0 to 1", t => (Model.Likelihood.TryParse(t, out var l), l),
        """{ "anyOf": [{ "enum": ["always", "usually", "sometimes", "rarely"] }, { "type": "number", "minimum": 0, "maximum": 1 }] }""",
        "usually")
    {
        Note = "These count: " + string.Join(", ", Model.Likelihood.Words.OrderByDescending(w => w.Value).Select(w => string.Create(CultureInfo.InvariantCulture, $"{w.Key} as {w.Value}"))) + ".",
    };

    public static Shape<Located<TroubleCode>> Code { get; } = new CodeShape();

    public static Shape<Located<double>> Number(double low, double high) => new ScalarShape<double>(
        high == double.MaxValue
            ? string.Create(CultureInfo.InvariantCulture, $"a number of at least {low}")
            : string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high}"),
        t => (TryNumber(t, out var n) && n >= low && n <= high, n),
        Constraints.Number(low, high),
        Math.Clamp(5, low, high).ToString(CultureInfo.InvariantCulture));

    public static Shape<Located<double>> AnyNumber { get; } = new ScalarShape<double>("a number", t => (TryNumber(t, out var n), n), """{ "type": "number" }""", "13.8");

    public static Shape<Located<int>> Whole(int low, int high) => new ScalarShape<int>(
        string.Create(CultureInfo.InvariantCulture, $"a whole number from {low} to {high}"),
        t => (int.TryParse(t, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n >= low && n <= high, n),
        Constraints.Whole(low, high),
        Math.Clamp(2, low, high).ToString(CultureInfo.InvariantCulture));

    public static Shape<Located<string>> Name(NameKind kind) => new NameShape(kind);

    public static Shape<Located<T>> Word<T>(params (string Word, T Value)[] words) =>
        new WordShape<T>(words.ToDictionary(w => w.Word, w => w.Value));

    internal static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
        && double.IsFinite(number);
}
