using System.Text.Json;

namespace GuideGen.Diagnosis.Tests;

public sealed class LikelihoodRowTests
{
    static readonly LikelihoodRow ByKind = LikelihoodRow.Of(new CauseKinds([0, 1, 0, 1, 1]), [0.1, 0.3], [(3, 0.9), (0, 0.5)]);

    static readonly JsonSerializerOptions Packed = new() { Converters = { new PackedRowJson() } };

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
        Assert.Throws<ArgumentException>(() => LikelihoodTable.Map([[0.1, 0.1, 0.2, 0.1, 0.1], ByKind], (_, column) => column));

    [Fact]
    public void A_cause_with_the_usual_values_can_be_changed_by_itself()
    {
        var changed = LikelihoodTable.Map([[0.1, 0.1, 0.9]], (place, column) => place == 1 ? [0.5] : column, [1]);

        Assert.Equal([0.1, 0.5, 0.9], changed[0].ToArray());
    }

    // The most frequent value first, then index and value of each other one: five times 0.1 by two kinds, of equally frequent ones
    // the smallest, and three causes that have the same value each for itself.
    [Theory]
    [InlineData("[0.1,0,0.5,3,0.9]", new[] { 0.5, 0.1, 0.1, 0.9, 0.1 })]
    [InlineData("[0.2,1,0.7]", new[] { 0.2, 0.7 })]
    [InlineData("[0.2,0,0.7]", new[] { 0.7, 0.2 })]
    public void A_row_is_packed_as_its_most_frequent_value_and_the_rest(string packed, double[] values) => Assert.Equal(packed, Pack([.. values]));

    [Fact]
    public void Causes_that_share_a_value_of_their_own_are_counted_together()
    {
        LikelihoodRow row = LikelihoodRow.Of(new CauseKinds([0, 0, 1, 1, 1]), [0.1, 0.3], [(2, 0.9), (3, 0.9), (4, 0.9)]);

        Assert.Equal("[0.9,0,0.1,1,0.1]", Pack(row));
    }

    static string Pack(LikelihoodRow row) => JsonSerializer.Serialize(row, Packed);
}
