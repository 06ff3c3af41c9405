using CsCheck;
using GuideGen.Codes.Reading;
using GuideGen.Testing;

namespace GuideGen.Codes.Tests.Reading;

public sealed class ScriptTests
{
    static readonly Script Script = new();

    [Theory, MemberData(nameof(ReadingRow.All), MemberType = typeof(ReadingRow))]
    public void The_script_reads_every_row_as_the_build_does(string file, int index)
    {
        var row = ReadingRow.At(file, index);
        var page = Script.Read(row.Text, row.ReadingPlace);

        Assert.Equal(row.Finds, page.Finds.Select(Printing.Print));
        if (row.Answers is not null)
            Assert.Equal(row.Answers, page.Answers.Select(Printing.Print));
        Assert.All(page.Finds, find => Assert.Equal(row.Text.Substring(find.Start, find.Length), find.Written));
    }

    [Theory, MemberData(nameof(SuggestionRow.All), MemberType = typeof(SuggestionRow))]
    public void The_script_suggests_what_the_build_does(int index)
    {
        var row = SuggestionRow.At(index);

        Assert.Equal(row.Want, Script.Suggest(row.Typed, row.Known()).Select(s => s.Print()));
    }

    [Fact]
    public void The_script_prints_and_parses_every_code() =>
        Assert.All(Enumerable.Range(0, 0x10000).Where(v => v % 7 == 0).Select(v => new TroubleCode((ushort)v)), code =>
        {
            Assert.Equal(code.ToString(), Script.FromBytes(code.High, code.Low));
            Assert.Equal(code.ToString(), Script.Parse(code.ToString().ToLowerInvariant()));
        });

    [Fact]
    public void Script_and_build_agree_on_random_texts() =>
        RandomTexts.Mixed.Select(Gen.Enum<ReadingPlace>()).Sample((text, place) =>
        {
            var reading = CodeReader.Read(text, place);
            var page = Script.Read(text, place);

            Assert.Equal(reading.Finds.Select(f => (f.Print(), f.Start, f.Written)), page.Finds.Select(f => (f.Print(), f.Start, f.Written)));
            Assert.Equal(reading.Answers.Select(Printing.Print), page.Answers.Select(Printing.Print));
        }, iter: Tries.Of(1000), threads: 1);
}
