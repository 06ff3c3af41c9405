using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using GuideGen.Guide.Findings;

namespace GuideGen.Commands;

/// <summary>The rule book, as lines for people or as an array for programs.</summary>
sealed class RulesReport(TextWriter output)
{
    static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    public void WriteList(IReadOnlyCollection<Rule> rules)
    {
        var width = rules.Max(r => r.Id.Length);
        foreach (var group in rules.GroupBy(r => RuleExplanations.All[r.Id].Group).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            output.WriteLine(group.Key);
            foreach (var rule in group) output.WriteLine($"  {rule.Id.PadRight(width)}  {SeverityWords.Key(rule.Severity),-7}  {rule.Title}");
        }
    }

    public void Explain(Rule rule)
    {
        var explanation = RuleExplanations.All[rule.Id];
        output.WriteLine($"{rule.Id}: {rule.Title} ({Weight(rule)})");
        output.WriteLine();
        output.WriteLine(explanation.Why);
        Show("Bad", explanation.Bad);
        Show("Good", explanation.Good);
    }

    static string Weight(Rule rule) =>
        SeverityWords.Key(rule.Severity) + (rule.IsErrorIfGrave ? ", error if the hazard is grave" : "") + (rule.CanBeDismissed ? ", can be dismissed with a reason" : "");

    void Show(string title, IEnumerable<RuleExample> examples)
    {
        foreach (var example in examples)
        {
            output.WriteLine();
            output.WriteLine($"{title}, in {example.Path}:");
            foreach (var line in example.Shown.Split('\n')) output.WriteLine(("    " + line).TrimEnd());
        }
    }

    public void WriteJson(IEnumerable<Rule> rules)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartArray();
            foreach (var rule in rules) Write(json, rule);
            json.WriteEndArray();
        }

        output.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }

    static void Write(Utf8JsonWriter json, Rule rule)
    {
        var explanation = RuleExplanations.All[rule.Id];
        json.WriteStartObject();
        json.WriteString("rule", rule.Id);
        json.WriteString("group", explanation.Group);
        json.WriteString("severity", SeverityWords.Key(rule.Severity));
        json.WriteBoolean("isErrorIfGrave", rule.IsErrorIfGrave);
        json.WriteBoolean("canBeDismissed", rule.CanBeDismissed);
        json.WriteString("title", rule.Title);
        json.WriteString("why", explanation.Why);
        WriteExamples(json, "bad", explanation.Bad);
        WriteExamples(json, "good", explanation.Good);
        json.WriteEndObject();
    }

    static void WriteExamples(Utf8JsonWriter json, string name, IEnumerable<RuleExample> examples)
    {
        json.WriteStartArray(name);
        foreach (var example in examples)
        {
            json.WriteStartObject();
            json.WriteString("path", example.Path);
            json.WriteString("text", example.Shown);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
