using System.Text.Json;
using GuideGen.Testing;

namespace GuideGen.Tests;

public sealed class SchemaTests : IDisposable
{
    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Theory]
    [InlineData(".schemas")]
    [InlineData("for-editors", "--out", "for-editors")]
    public void A_schema_of_every_kind_is_written_and_what_else_lies_there_stays(string folder, params string[] options)
    {
        temp.Write($"{folder}/mine.json", "mine");

        var run = Tool.Run(temp.PathTo(), ["schema", .. options]);

        Assert.Equal((0, $"12 schemas in {temp.PathTo(folder)}\n", ""), (run.Code, run.Out.ReplaceLineEndings("\n"), run.Error));
        Assert.Equal("mine", File.ReadAllText(temp.PathTo(folder, "mine.json")));
        using var schema = JsonDocument.Parse(File.ReadAllText(temp.PathTo(folder, "fault.json")));
        Assert.Equal("May the owner drive on with it? Write one of stop-now, to-safety, gently, no-hurry.", schema.RootElement.GetProperty("properties").GetProperty("drive").GetProperty("description").GetString());
    }
}
