using System.Text.Json;

namespace GuideGen.Diagnosis.Tests;

public sealed class LikelihoodRowTests
{
    static readonly LikelihoodRow ByKind = LikelihoodRow.Of(new CauseKinds([0, 1, 0, 1, 1]), [0.1, 0.3], [(3, 0.9), (0, 0.5)]);

    public static TheoryData<LikelihoodRow, double[]> Rows => new()
    {
        { [0.2, 0.7, 0.2], [0.2, 0.7, 0.2] },
        { [], [] },
        { LikelihoodRow.Of(4, 0.01, [(3, 0.5), (1, 0.9)]), [0.01, 0.9, 0.01, 0.5] },
        { ByKind, [0.5, 0.3, 0.1, 0.9, 0.3] },
        { ByKind.Map(l => 2 * l), [1, 0.6, 0.2, 1.8, 0.6] },
        { ByKind.For([4, 0, 0]), [0.3, 0.5, 0.5] },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_row_is_all_its_values_however_it_is_kept(LikelihoodRow row, double[] values)
    {
        Assert.Equal(values, row.ToArray());
        Assert.Equal(values, Enumerable.Range(0, row.Count).Select(c => row[c]));
        Assert.Equal(values.Order(), row.Values().SelectMany(v => Enumerable.Repeat(v.Value, v.Causes)).Order());
        Assert.Equal(values, JsonSerializer.Deserialize<LikelihoodRow>(JsonSerializer.Serialize(row))!);
    }

    [Fact]
    public void A_table_has_causes_of_one_kind() =>
        Assert.Throws<ArgumentException>(() => LikelihoodTable.Map([ByKind], (_, column) => column));
}
