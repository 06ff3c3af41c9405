using System.Globalization;
using GuideGen.Codes.Reading;
using GuideGen.Testing;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>Types 2,000 random standard codes wrongly in every way and looks where the meant one comes in the suggestions.</summary>
public sealed class TypingErrorExperiment(ITestOutputHelper output)
{
    static readonly int Times = Tries.Of(2000);

    static readonly string[] Codes = Repository.Read("tests", "GuideGen.Codes.Tests", "Data", "standard-codes.txt").Split('\n', StringSplitOptions.RemoveEmptyEntries);
    static readonly HashSet<TroubleCode> Assigned = [.. Codes.Select(c => TroubleCode.Parse(c))];

    sealed record Tally(string Name, bool IsPlainWrongDigit, int Tried, int First, int WithinThree, int OnlyOne, int OnlyOneFirst)
    {
        public override string ToString() => string.Create(CultureInfo.InvariantCulture,
            $"{Name,-20}{Tried,7}{100.0 * First / Tried,9:F2}{100.0 * WithinThree / Tried,9:F2}{OnlyOne,10}{100.0 * OnlyOneFirst / Math.Max(1, OnlyOne),9:F2}");
    }

    [Fact]
    public void The_meant_code_comes_first_or_nearly_so()
    {
        var random = new Random(20120);
        var tallies = TypingError.All.Select(error => Run(error, random)).ToList();

        output.WriteLine($"{"error",-20}{"tried",7}{"first %",9}{"in 3 %",9}{"only one",10}{"first %",9}");
        tallies.ForEach(tally => output.WriteLine(tally.ToString()));
        var slips = tallies.Where(t => !t.IsPlainWrongDigit).ToList();
        output.WriteLine(Sum("without wrong digit", slips).ToString());

        Assert.All(tallies, t => Assert.Equal(Times, t.Tried));
        Assert.All(slips, t => Assert.True(t.OnlyOneFirst >= 0.995 * t.OnlyOne, t.ToString()));
        Assert.True(Sum("all", slips).WithinThree >= 0.97 * Sum("all", slips).Tried);
    }

    static Tally Sum(string name, List<Tally> tallies) => new(name, false, tallies.Sum(t => t.Tried), tallies.Sum(t => t.First),
        tallies.Sum(t => t.WithinThree), tallies.Sum(t => t.OnlyOne), tallies.Sum(t => t.OnlyOneFirst));

    static Tally Run(TypingError error, Random random)
    {
        var meanings = Codes.SelectMany(code => error.Spoil(code).Select(typed => (typed, code))).ToLookup(pair => pair.typed, pair => pair.code);
        var spoilt = Codes.Select(code => (code, ways: error.Spoil(code).ToArray())).Where(pair => pair.ways.Length > 0).ToArray();
        int tried = 0, first = 0, withinThree = 0, onlyOne = 0, onlyOneFirst = 0;
        for (; tried < Times; tried++)
        {
            var (code, ways) = spoilt[random.Next(spoilt.Length)];
            var typed = ways[random.Next(ways.Length)];
            var suggestions = CodeSuggester.Suggest(typed, c => new(Assigned.Contains(c), false, 0));
            var place = suggestions.Select(s => s.Code).ToList().IndexOf(TroubleCode.Parse(code));
            var isOnlyOne = meanings[typed].Distinct().Count() == 1 && !(TroubleCode.TryParse(typed, out var itself) && itself.ToString() != code && Assigned.Contains(itself));
            first += place == 0 ? 1 : 0;
            withinThree += place is >= 0 and < 3 ? 1 : 0;
            onlyOne += isOnlyOne ? 1 : 0;
            onlyOneFirst += isOnlyOne && place == 0 ? 1 : 0;
        }
        return new(error.Name, error.IsPlainWrongDigit, tried, first, withinThree, onlyOne, onlyOneFirst);
    }
}
