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
}
