using System.Runtime.InteropServices;
using GuideGen.Search.Words;

namespace GuideGen.Search.Lunr;

/// <summary>Indexes some documents, into bytes that can be kept.</summary>
/// <remarks>
/// First the references, led by how many there are; then the number of field texts, that of their items, and how many bytes the texts take.
/// Each field text has its length in terms, how many different ones it has, and of each of these its number and how often it stands there, in the order of
/// first appearance. Behind the texts come the terms, led by how many there are, each with its form. Numbers take seven bits a byte, the lowest first; strings are
/// led by their length and are UTF-16 as this machine has it, since a stem may end within a pair of surrogates.
/// </remarks>
sealed class ChunkWriter : IDisposable
{
    // A text has about so many characters for each byte of its items: a stream that doubles would throw away half of what it takes.
    const int CharactersPerByte = 3;

    readonly Vocabulary _vocabulary = new();
    readonly BinaryWriter _texts;
    readonly List<int> _termsOfText = [];
    int[] _countOfTerm = new int[1024];
    int _textCount, _itemCount;

    ChunkWriter(int characters) => _texts = new(new MemoryStream(characters / CharactersPerByte));

    public static byte[] Pack(IReadOnlyCollection<LunrDocument> documents)
    {
        using var chunk = new ChunkWriter(documents.Sum(d => d.Texts.Sum(t => t.Length)));
        foreach (var text in documents.SelectMany(d => d.Texts)) chunk.Add(LowerCase.Of(text));
        return chunk.Packed([.. documents.Select(d => d.Ref)]);
    }

    public void Dispose() => _texts.Dispose();

    void Add(ReadOnlySpan<char> text)
    {
        var length = 0;
        for (var token = Tokens.Next(ref text); token.Length > 0; token = Tokens.Next(ref text))
        {
            var term = _vocabulary.IndexOf(token);
            if (term < 0) continue;
            length++;
            if (term >= _countOfTerm.Length) Array.Resize(ref _countOfTerm, term * 2);
            if (_countOfTerm[term]++ == 0) _termsOfText.Add(term);
        }

        _texts.Write7BitEncodedInt(length);
        EndText();
    }

    void EndText()
    {
        _texts.Write7BitEncodedInt(_termsOfText.Count);
        foreach (var term in _termsOfText)
        {
            _texts.Write7BitEncodedInt(term);
            _texts.Write7BitEncodedInt(_countOfTerm[term]);
            _countOfTerm[term] = 0;
        }

        _textCount++;
        _itemCount += _termsOfText.Count;
        _termsOfText.Clear();
    }

    byte[] Packed(IReadOnlyCollection<string> refs)
    {
        using var packed = new MemoryStream();
        using var writer = new BinaryWriter(packed);
        writer.Write7BitEncodedInt(refs.Count);
        foreach (var one in refs) Write(one);
        writer.Write7BitEncodedInt(_textCount);
        writer.Write7BitEncodedInt(_itemCount);
        writer.Write7BitEncodedInt((int)_texts.BaseStream.Length);
        ((MemoryStream)_texts.BaseStream).WriteTo(packed);
        writer.Write7BitEncodedInt(_vocabulary.Terms.Count);
        foreach (var (term, form) in _vocabulary.Terms.Zip(_vocabulary.Forms))
        {
            Write(term);
            Write(form);
        }

        return packed.ToArray();

        void Write(string text)
        {
            writer.Write7BitEncodedInt(text.Length);
            writer.Write(MemoryMarshal.AsBytes(text.AsSpan()));
        }
    }
}
