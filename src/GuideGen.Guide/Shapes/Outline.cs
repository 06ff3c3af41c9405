using System.Collections.Immutable;

namespace GuideGen.Guide.Shapes;

/// <summary>What an author may write in one place, as a value that schemas, drafts and the help for writers are made from.</summary>
/// <param name="Expected">As it completes 'expected …'.</param>
public abstract record Outline(string Expected);

/// <summary>A single value.</summary>
/// <param name="Constraint">A JSON Schema (2020-12) that allows the same values, as text.</param>
/// <param name="Example">A good value as an author writes it.</param>
/// <param name="IsWording">True for words that readers read, which another language says otherwise; false for facts and names.</param>
public sealed record ValueOutline(string Expected, string Constraint, string Example, bool IsWording = false) : Outline(Expected)
{
    /// <summary>Of what it is the name; null if it is no name.</summary>
    public Model.NameKind? Names { get; init; }

    /// <summary>A sentence more for writers; empty if there is none.</summary>
    public string Note { get; init; } = "";
}

public sealed record ListOutline(string Expected, Outline Item, int Fewest) : Outline(Expected);

/// <summary>Free keys with values of one form.</summary>
public sealed record MapOutline(string Expected, Outline Key, Outline Item, int Fewest) : Outline(Expected);

/// <summary>Keys that are known beforehand.</summary>
/// <param name="Conditions">What holds between the keys, as a list of JSON Schemas; empty if nothing does.</param>
public sealed record RecordOutline(string Expected, ImmutableArray<IField> Fields, string Conditions) : Outline(Expected);

/// <summary>One of several records.</summary>
public sealed record ChoiceOutline(string Expected, ImmutableArray<RecordOutline> Ways) : Outline(Expected);

/// <summary>JSON Schemas of single values that several shapes share.</summary>
static class Constraints
{
    /// <summary>An editor sees an unquoted 2012 or true as a number or a flag; to the loader it is text as well.</summary>
    public static readonly string Text = $$"""{ "type": ["string", "number", "boolean"], "pattern": "\\S", "maxLength": {{GuideLimits.LineLength}} }""";

    public const string Amount = "[0-9]{1,6}(\\\\.[0-9]+)?";

    public const string Year = "(19[0-9]{2}|20[0-9]{2}|2100)";

    public static string Number(double low, double high) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $$"""{ "type": "number", "minimum": {{low}}{{(high == double.MaxValue ? "" : $", \"maximum\": {high}")}} }""");

    public static string Whole(int low, int high) => $$"""{ "type": "integer", "minimum": {{low}}, "maximum": {{high}} }""";

    /// <summary>A number, or text of a form; the form stands between the ends of the text.</summary>
    public static string NumberOr(string number, string form) =>
        $$"""{ "anyOf": [{ "type": "number", {{number}} }, { "type": "string", "pattern": "^{{form}}$" }] }""";

    public static string OneOf(IEnumerable<string> words) =>
        $$"""{ "enum": [{{string.Join(", ", words.Select(w => w is "true" or "false" ? w : $"\"{w}\""))}}] }""";
}
