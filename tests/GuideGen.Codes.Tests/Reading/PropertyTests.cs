using System.Globalization;
using CsCheck;
using GuideGen.Codes.Raw;
using GuideGen.Codes.Reading;
using GuideGen.Testing;

namespace GuideGen.Codes.Tests.Reading;

public sealed class PropertyTests
{
    static readonly Gen<TroubleCode> Codes = Gen.UShort[1, ushort.MaxValue].Select(v => new TroubleCode(v));

    // None of these words raises or lowers trust, and none looks like a code.
    static readonly string[] Prose =
        ["it", "stalled", "again", "near", "Leeds", "at", "70", "mph", "after", "2,000", "miles;", "the", "garage", "said", "wait", "(twice)", "in", "rain.", "Then", "1.6", "£45", "2019-04-03"];

    [Fact]
    public void Reading_never_fails_and_every_find_stands_where_it_says() =>
        RandomTexts.Mixed.Select(Gen.Enum<ReadingPlace>()).Sample((text, place) =>
        {
            var reading = CodeReader.Read(text, place);
            Assert.All(reading.Finds, find => Assert.Equal(find.Written, text.Substring(find.Start, find.Length)));
            Assert.Equal(reading.Finds.Length, reading.Finds.Select(f => (f.Reported, f.Module)).Distinct().Count());
            Assert.True(RawAnswers.Read(text).All(answer => answer.Note is null or { Length: > 0 }));
            CodeSuggester.Suggest(text, _ => new(true, false, 0));
        }, iter: Tries.Of(20_000));

    [Fact]
    public void Exactly_the_codes_planted_in_prose_are_found() =>
        Gen.Select(Codes.Array[0, 6], Gen.Int[0, Prose.Length - 1].Select(i => Prose[i]).Array[20, 40], Gen.Int[0, 1000]).Sample((codes, words, seed) =>
        {
            var planted = words.ToList();
            var random = new Random(seed);
            foreach (var code in codes)
                planted.Insert(random.Next(planted.Count + 1), random.Next(2) == 0 ? code.ToString() : code.ToString().ToLowerInvariant());
            var text = string.Join(' ', planted);

            var found = CodeReader.Read(text, ReadingPlace.FreeText).Finds;

            Assert.Equal(codes.Distinct().Order(), found.Select(f => f.Code).Order());
            Assert.All(found, find => Assert.Equal(Certainty.Certain, find.Certainty));
        }, iter: Tries.Of(5000));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_was_encoded_for_a_bus_is_decoded_again(bool isCan) =>
        Codes.Array[0, 40].Sample(codes =>
        {
            var text = isCan ? EncodeFrames(codes) : EncodePairs(codes);
            Assert.Equal(codes, RawAnswers.Read(text).SelectMany(a => a.Codes).Select(c => c.Reported.Code));
            Assert.All(RawAnswers.Read(text), answer => Assert.True(answer.IsComplete));
        }, iter: Tries.Of(2000));

    [Fact]
    public void Every_code_survives_a_report_in_three_bytes_and_a_status() =>
        Gen.Select(Codes, Gen.Byte, Gen.Byte, Gen.Byte).Array[1, 5].Sample(records =>
        {
            var text = "59 02 FF " + Hex(records.SelectMany(r => new[] { r.Item1.High, r.Item1.Low, r.Item2, r.Item3 }));
            var codes = RawAnswers.Read(text).Single().Codes;

            Assert.Equal(records.Select(r => new ReportedCode(r.Item1, r.Item2, new StatusByte(r.Item3))), codes.Select(c => c.Reported));
        }, iter: Tries.Of(2000));

    [Fact]
    public void A_code_with_its_failure_type_and_status_is_read_back_from_its_text() =>
        Gen.Select(Codes, Gen.Byte, Gen.Byte).Sample((code, type, status) =>
        {
            var text = string.Create(CultureInfo.InvariantCulture, $"{code}-{type:X2}:{status:X2}");
            var find = Assert.Single(CodeReader.Read(text, ReadingPlace.FreeText).Finds);

            Assert.Equal(new ReportedCode(code, type, new StatusByte(status)), find.Reported);
        });

    // ISO 15765-2 by the book: single frame up to seven bytes, else first and consecutive frames, padded with AA.
    static string EncodeFrames(TroubleCode[] codes)
    {
        byte[] payload = [0x43, (byte)codes.Length, .. codes.SelectMany(c => new[] { c.High, c.Low })];
        if (payload.Length <= 7)
            return "7E8 " + Hex([(byte)payload.Length, .. payload]);
        List<string> lines = ["7E8 " + Hex([(byte)(0x10 | (payload.Length >> 8)), (byte)payload.Length, .. payload.Take(6)])];
        foreach (var (chunk, i) in payload.Skip(6).Chunk(7).Select((chunk, i) => (chunk, i)))
            lines.Add("7E8 " + Hex([(byte)(0x20 | ((i + 1) & 15)), .. chunk, .. Enumerable.Repeat((byte)0xAA, 7 - chunk.Length)]));
        return string.Join('\n', lines);
    }

    // ISO 9141-2: three pairs in a message, the last filled up with empty slots, a checksum behind.
    static string EncodePairs(TroubleCode[] codes) => string.Join('\n', codes.Chunk(3).Select(three =>
    {
        byte[] message = [0x48, 0x6B, 0x10, 0x43, .. three.SelectMany(c => new[] { c.High, c.Low }), .. new byte[6 - (2 * three.Length)]];
        return Hex([.. message, (byte)message.Sum(b => b)]);
    }));

    static string Hex(IEnumerable<byte> bytes) => string.Join(' ', bytes.Select(b => b.ToString("X2", CultureInfo.InvariantCulture)));
}
