using System.Text;

namespace GuideGen.Search.Lunr;

/// <summary>The serialised index, byte for byte what <c>JSON.stringify</c> makes of lunr.js 2.3.9's own.</summary>
public static class LunrJson
{
    /// <summary>UTF-8, no byte order mark. The stream is neither flushed to disk nor closed.</summary>
    public static void Write(LunrIndex index, Stream utf8)
    {
        using var json = new ScriptJson(utf8);
        json.Raw("{\"version\":"u8);
        json.Text(LunrScript.Version);
        json.Raw(",\"fields\":["u8);
        json.List(index.Fields.Length, f => json.Text(index.Fields[f].Name));
        json.Raw("],\"fieldVectors\":["u8);
        WriteVectors(index, json);
        json.Raw("],\"invertedIndex\":["u8);
        WritePostings(index, json);
        json.Raw("],\"pipeline\":[\"stemmer\"]}"u8);
    }

    static void WriteVectors(LunrIndex index, ScriptJson json)
    {
        var idf = Enumerable.Range(0, index.Terms.Length).Select(index.InverseDocumentFrequency).ToArray();
        json.List(index.Lengths.Length, text =>
        {
            var field = text % index.Fields.Length;
            json.Raw("["u8);
            json.Text($"{index.Fields[field].Name}/{index.Refs[text / index.Fields.Length]}");
            json.Raw(",["u8);
            var norm = Bm25.LengthNorm(index.Lengths[text], index.AverageLengths[field]);
            var (start, end) = (index.ByText.Starts[text], index.ByText.Starts[text + 1]);
            for (var i = start; i < end; i++)
            {
                if (i > start) json.Raw(","u8);
                json.Number(index.ByText.Items[i]);
                json.Raw(","u8);
                json.Thousandths(Bm25.Thousandths(idf[index.ByText.Items[i]], index.ByText.Counts[i], norm, index.Fields[field].Boost));
            }
            json.Raw("]]"u8);
        });
    }

    static void WritePostings(LunrIndex index, ScriptJson json)
    {
        var keys = Array.ConvertAll([.. index.Refs], r => Encoding.UTF8.GetBytes(ScriptJson.Quote(r) + ":{}"));
        var names = index.Fields.Select(f => Encoding.UTF8.GetBytes(",\"" + f.Name + "\":{")).ToArray();
        var ranks = ScriptKeys.Ranks(index.Refs);
        json.List(index.SortedTerms.Length, at =>
        {
            var term = index.SortedTerms[at];
            json.Raw("["u8);
            json.Text(index.Terms[term]);
            json.Raw(",{\"_index\":"u8);
            json.Number(term);
            for (var field = 0; field < names.Length; field++)
            {
                json.Raw(names[field]);
                var row = term * names.Length + field;
                var documents = index.ByTerm.Items.AsSpan(index.ByTerm.Starts[row]..index.ByTerm.Starts[row + 1]);
                WriteDocuments(ranks is null ? documents : ScriptKeys.Ordered(documents, ranks), keys, json);
            }
            json.Raw("}]"u8);
        });
    }

    static void WriteDocuments(ReadOnlySpan<int> documents, byte[][] keys, ScriptJson json)
    {
        for (var i = 0; i < documents.Length; i++)
        {
            if (i > 0) json.Raw(","u8);
            json.Raw(keys[documents[i]]);
        }
        json.Raw("}"u8);
    }
}
