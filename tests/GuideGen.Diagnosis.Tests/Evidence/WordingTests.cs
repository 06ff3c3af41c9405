using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class WordingTests
{
    // Common practice, no source: under 5 no percentage, under 20 'few'.
    [Theory]
    [InlineData(0, 0, false, ShareWording.NoReports)]
    [InlineData(0, 0, true, ShareWording.AuthorsEstimate)]
    [InlineData(1, 1, true, ShareWording.TooFew)]
    [InlineData(0, 4, true, ShareWording.TooFew)]
    [InlineData(0, 5, true, ShareWording.NoneSoFar)]
    [InlineData(0, 90, true, ShareWording.NoneSoFar)]
    [InlineData(1, 5, true, ShareWording.Few)]
    [InlineData(19, 19, true, ShareWording.Few)]
    [InlineData(1, 20, true, ShareWording.Plain)]
    public void Number_of_reports_decides_the_words(int x, int n, bool opinion, ShareWording wording) =>
        Assert.Equal(wording, Wording.Of(new(x, n), opinion));

    [Theory]
    [InlineData(0.95, OrderWording.Clear)]
    [InlineData(0.9, OrderWording.Clear)]
    [InlineData(0.83, OrderWording.AboutLevel)]
    public void Order_is_called_clear_from_nine_in_ten(double chance, OrderWording wording) =>
        Assert.Equal(wording, Wording.OfOrder(chance));

    [Theory]
    [InlineData(0.79, 8, 10)]
    [InlineData(0.05, 1, 10)]
    [InlineData(0.049, 5, 100)]
    [InlineData(0.97, 97, 100)]
    [InlineData(0.0001, 1, 100)]
    [InlineData(0.9999, 99, 100)]
    public void Probabilities_become_counts_that_never_say_none_or_all(double probability, int count, int of) =>
        Assert.Equal((count, of), Wording.Frequency(probability));
}
