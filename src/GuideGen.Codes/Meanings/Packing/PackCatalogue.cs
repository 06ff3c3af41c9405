using System;
using System.Collections.Generic;
using System.IO;
using System.IO.Compression;
using System.Linq;
using System.Text;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

/// <summary>
/// Turns catalogue.txt into the bytes that CatalogueData reads: their length, then deflated, little-endian: the number of rows; one column each
/// of code, head and condition, rows in the order of the printed codes; then the heads and the condition keys, one a line.
/// </summary>
public sealed class PackCatalogue : Task
{
    const string Letters = "PCBU";

    public string Source { get; set; }

    public string Packed { get; set; }

    public override bool Execute()
    {
        var heads = new List<string>();
        var rows = new SortedDictionary<string, Row>(StringComparer.Ordinal);
        var number = 0;
        foreach (var line in File.ReadLines(Source, Encoding.UTF8))
        {
            number++;
            if (line.Length > 0 && line[0] != '#' && !ReadLine(line, heads, rows))
                Log.LogError("catalogue", "GG-CAT", null, Source, number, 1, number, 1, "Not 'subject: CODE condition, ...', or a code twice.");
        }
        if (!Log.HasLoggedErrors)
            Write(heads, rows);
        return !Log.HasLoggedErrors;
    }

    static bool ReadLine(string line, List<string> heads, SortedDictionary<string, Row> rows)
    {
        var colon = line.LastIndexOf(": ", StringComparison.Ordinal);
        if (colon < 0)
            return false;
        heads.Add(line.Substring(0, colon));
        foreach (var part in line.Substring(colon + 2).Split(new[] { ", " }, StringSplitOptions.None))
        {
            if (part.Length < 7)
                return false;
            var code = part.Substring(0, 5);
            var support = part[5] == '?' ? 2 : part[5] == '~' ? 1 : 0;
            var condition = part.Substring(support == 0 ? 6 : 7);
            if (rows.ContainsKey(code) || part[support == 0 ? 5 : 6] != ' ')
                return false;
            rows.Add(code, new Row { Head = heads.Count - 1, Condition = condition, Support = support });
        }
        return true;
    }

    void Write(List<string> heads, SortedDictionary<string, Row> rows)
    {
        var circuit = "circuit ";
        var keys = rows.Values.Select(r => Bare(r.Condition, circuit)).Distinct().OrderBy(k => k, StringComparer.Ordinal).ToList();
        var bytes = new MemoryStream();
        using (var writer = new BinaryWriter(bytes, new UTF8Encoding(false), leaveOpen: true))
        {
            writer.Write((ushort)rows.Count);
            WriteColumn(writer, rows.Keys.Select(Value));
            WriteColumn(writer, rows.Values.Select(r => r.Head));
            foreach (var row in rows.Values)
                writer.Write((byte)keys.IndexOf(Bare(row.Condition, circuit)));
            foreach (var row in rows.Values)
                writer.Write((byte)(row.Support | (row.Condition == "circuit" || row.Condition.StartsWith(circuit, StringComparison.Ordinal) ? 4 : 0)));
            writer.Write(Encoding.UTF8.GetBytes(string.Join("\n", keys) + "\n\n" + string.Join("\n", heads) + "\n"));
        }
        using (var file = File.Create(Packed))
        {
            file.Write(BitConverter.GetBytes((int)bytes.Length), 0, sizeof(int));
            using (var deflate = new DeflateStream(file, CompressionLevel.Optimal))
                bytes.WriteTo(deflate);
        }
    }

    static string Bare(string condition, string circuit) =>
        condition == "circuit" ? "fault" : condition.StartsWith(circuit, StringComparison.Ordinal) ? condition.Substring(circuit.Length) : condition;

    // Steps from the row before pack far better than the values: most steps are 0 or 1.
    static void WriteColumn(BinaryWriter writer, IEnumerable<int> values)
    {
        var steps = new List<int>();
        var last = 0;
        foreach (var value in values)
        {
            steps.Add(value - last);
            last = value;
        }
        foreach (var step in steps)
            writer.Write((byte)step);
        foreach (var step in steps)
            writer.Write((byte)(step >> 8));
    }

    static int Value(string code) =>
        (Letters.IndexOf(code[0]) << 14) | ((code[1] - '0') << 12) | Convert.ToInt32(code.Substring(2), 16);

    sealed class Row
    {
        public int Head;
        public string Condition;
        public int Support;
    }
}
