namespace GuideGen.Codes.Tests.Meanings;

/// <summary>Sources: the two public lists in Data/ (see its README).</summary>
public sealed class MeaningAgreementTests
{
    [Fact]
    public void The_catalogue_has_the_codes_of_the_open_list_and_no_others() =>
        Assert.Equal(ListedCode.All.Select(f => f.Code).Order(), CodeCatalogue.All.Select(e => e.Code));

    [Fact]
    public void Subject_sides_and_condition_agree_with_the_open_list_except_where_a_reason_is_given()
    {
        var differences = ListedCode.All.Select(f => (f.Code, Difference: FactComparer.Difference(f.Text, CodeCatalogue.Find(f.Code)!)))
            .Where(d => d.Difference.Length > 0).ToList();
        var reasons = DataFile.Rows("agreement-exceptions.tsv").ToDictionary(r => TroubleCode.Parse(r[0]), r => r[1]);

        Assert.Equal([], differences.Where(d => !reasons.ContainsKey(d.Code)));
        Assert.Equal(reasons.Keys.Order(), differences.Select(d => d.Code).Order());
        Assert.All(reasons.Values, r => Assert.True(r.Length > 20, r));
    }

    [Fact]
    public void Support_counts_the_lists_and_is_weak_in_blocks_B0_and_C0()
    {
        foreach (var (code, _, lists) in ListedCode.All)
        {
            var weakBlock = code.ToString()[..2] is "B0" or "C0";
            var expected = weakBlock || lists == 1 ? Support.Weak : lists == 2 ? Support.Fair : Support.Strong;
            Assert.Equal((code, expected), (code, CodeCatalogue.Find(code)!.Support));
        }
    }

    [Fact]
    public void Condition_part_and_sides_agree_with_a_second_list()
    {
        var differences = SecondList.Rows.Select(r => (r.Code, Difference: r.Difference(CodeCatalogue.Find(r.Code)!))).Where(d => d.Difference.Length > 0).ToList();
        var reasons = DataFile.Rows("second-list-exceptions.tsv").ToDictionary(r => TroubleCode.Parse(r[0]), r => r[1]);

        Assert.True(SecondList.Rows.Length >= 400, $"{SecondList.Rows.Length} rows");
        Assert.Equal([], differences.Where(d => !reasons.ContainsKey(d.Code)));
        Assert.Equal(reasons.Keys.Order(), differences.Select(d => d.Code).Order());
    }
}
