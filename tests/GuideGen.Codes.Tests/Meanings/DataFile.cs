using GuideGen.Testing;

namespace GuideGen.Codes.Tests.Meanings;

static class DataFile
{
    public static IEnumerable<string[]> Rows(string name) =>
        Repository.Read("tests", "GuideGen.Codes.Tests", "Meanings", "Data", name).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split('\t'));
}
