using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Tests.Reading;

public sealed class ReadingTests
{
    [Theory, MemberData(nameof(ReadingRow.All), MemberType = typeof(ReadingRow))]
    public void A_text_gives_the_finds_and_answers_of_its_row(string file, int index)
    {
        var row = ReadingRow.At(file, index);
        var reading = CodeReader.Read(row.Text, row.ReadingPlace);

        Assert.Equal(row.Finds, reading.Finds.Select(Printing.Print));
        if (row.Answers is not null)
            Assert.Equal(row.Answers, reading.Answers.Select(Printing.Print));
        Assert.All(reading.Finds, find => Assert.Equal(row.Text.Substring(find.Start, find.Length), find.Written));
    }

    [Theory]
    [InlineData(ReadingPlace.LookUpBox, "(P02 99)", "P02 99")]
    [InlineData(ReadingPlace.LookUpBox, " P.0.2.9.9. ", "P.0.2.9.9")]
    [InlineData(ReadingPlace.FreeText, "0x43 0x02 0x99 0x01 0x13", "02 0x99", "01 0x13")]
    [InlineData(ReadingPlace.FreeText, "7E8 04 43 01 02 99", "02 99")]
    [InlineData(ReadingPlace.FreeText, "7E80443010299", "0299")]
    [InlineData(ReadingPlace.FreeText, ">59 02 FF 02 99 00 2F", "02 99 00 2F")]
    public void A_find_is_what_was_written(ReadingPlace place, string text, params string[] written) =>
        Assert.Equal(written, CodeReader.Read(text, place).Finds.Select(f => f.Written));
}
