using System.Text.Json;

namespace GuideGen.Guide.Findings;

/// <summary>Findings as a log that code hosts and editors read (OASIS SARIF 2.1.0).</summary>
/// <param name="prefix">Goes before the path of every file, so that it counts from the folder that the reader of the log takes as its root; empty, or ending in a slash.</param>
public sealed class SarifWriter(string prefix)
{
    const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>In UTF-8. Only rules that found something are listed with the tool.</summary>
    public void Write(Stream stream, IReadOnlyCollection<Finding> findings)
    {
        var rules = findings.Select(f => f.Rule).DistinctBy(r => r.Id).OrderBy(r => r.Id, StringComparer.Ordinal).ToList();
        using var json = new Utf8JsonWriter(stream, FindingFormatter.JsonOptions);
        json.WriteStartObject();
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.WriteStartArray("runs");
        json.WriteStartObject();
        WriteTool(json, rules);
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("results");
        foreach (var finding in findings) WriteResult(json, finding, rules.FindIndex(r => r.Id == finding.Rule.Id));
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void WriteTool(Utf8JsonWriter json, List<Rule> rules)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "guidegen");
        json.WriteString("semanticVersion", typeof(SarifWriter).Assembly.GetName().Version!.ToString(3));
        json.WriteStartArray("rules");
        foreach (var rule in rules) WriteRule(json, rule);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    static void WriteRule(Utf8JsonWriter json, Rule rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        WriteText(json, "shortDescription", rule.Title + ".");
        if (RuleExplanations.All.TryGetValue(rule.Id, out var explanation)) WriteText(json, "fullDescription", explanation.Why);
        json.WriteStartObject("defaultConfiguration");
        json.WriteString("level", SeverityWords.Key(rule.Severity));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    void WriteResult(Utf8JsonWriter json, Finding finding, int ruleIndex)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Rule.Id);
        json.WriteNumber("ruleIndex", ruleIndex);
        json.WriteString("level", SeverityWords.Key(finding.Severity));
        WriteText(json, "message", $"{finding.Message} {finding.Hint}".TrimEnd());
        json.WriteStartArray("locations");
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", Uri(prefix + finding.Span.Path));
        json.WriteEndObject();
        WriteRegion(json, finding);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void WriteRegion(Utf8JsonWriter json, Finding finding)
    {
        var (from, to) = (finding.Span.From, finding.Span.To);
        json.WriteStartObject("region");
        json.WriteNumber("startLine", from.Line);
        json.WriteNumber("startColumn", from.Column);
        json.WriteNumber("endLine", to.Line);
        json.WriteNumber("endColumn", to.Column);
        json.WriteEndObject();
    }

    static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    /// <summary>A path as a relative reference (RFC 3986): a blank, a percent sign or a letter with an accent is escaped.</summary>
    static string Uri(string path) => string.Join('/', path.Split('/').Select(System.Uri.EscapeDataString));
}
