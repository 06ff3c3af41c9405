using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using GuideGen.Site.Learning;

namespace GuideGen.Commands;

/// <summary>Tables for people, with columns under each other, or one object of arrays for programs.</summary>
sealed class EvidenceReport(ImmutableArray<EvidenceTable> tables)
{
    static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    public void WriteText(TextWriter output)
    {
        foreach (var table in tables)
        {
            output.WriteLine(table.Title);
            if (table.Rows.IsEmpty) output.WriteLine("  none");
            else WriteRows(output, [table.Columns, .. table.Rows.Select(r => r.Select(Text).ToImmutableArray())]);
            output.WriteLine();
        }
    }

    public void WriteJson(TextWriter output)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            foreach (var table in tables) Write(json, table);
            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }

    static void WriteRows(TextWriter output, ImmutableArray<ImmutableArray<string>> rows)
    {
        ImmutableArray<int> widths = [.. Enumerable.Range(0, rows[0].Length).Select(c => rows.Max(r => r[c].Length))];
        foreach (var row in rows) output.WriteLine("  " + string.Join("  ", row.Select((cell, c) => cell.PadRight(widths[c]))).TrimEnd());
    }

    static void Write(Utf8JsonWriter json, EvidenceTable table)
    {
        json.WriteStartArray(table.Id);
        foreach (var row in table.Rows)
        {
            json.WriteStartObject();
            foreach (var (column, cell) in table.Columns.Zip(row))
            {
                json.WritePropertyName(column);
                Write(json, cell);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    static void Write(Utf8JsonWriter json, object? cell)
    {
        switch (cell)
        {
            case null: json.WriteNullValue(); break;
            case int whole: json.WriteNumberValue(whole); break;
            case double number: json.WriteNumberValue(number); break;
            default: json.WriteStringValue(Text(cell)); break;
        }
    }

    static string Text(object? cell) => Convert.ToString(cell, CultureInfo.InvariantCulture) is { Length: > 0 } text ? text : "-";
}
