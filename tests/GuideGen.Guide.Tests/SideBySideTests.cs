namespace GuideGen.Guide.Tests;

public sealed class SideBySideTests
{
    [Fact]
    public void What_is_made_stands_in_the_order_of_the_items_also_where_it_is_asked_for_within()
    {
        var made = SideBySide.Map([.. Enumerable.Range(0, 50)], i => string.Join(' ', SideBySide.Map([.. Enumerable.Range(0, i)], j => i * j)));

        Assert.Equal(Enumerable.Range(0, 50).Select(i => string.Join(' ', Enumerable.Range(0, i).Select(j => i * j))), made);
    }

    [Fact]
    public void A_fault_is_thrown_as_it_was()
    {
        var fault = Assert.Throws<FormatException>(() => SideBySide.Map<int, int>([1, 2, 3], i => i == 2 ? throw new FormatException("two") : i));

        Assert.Equal("two", fault.Message);
        Assert.Equal("two", Assert.Throws<FormatException>(() => SideBySide.ForEach([1, 2, 3], 2, i => { if (i == 2) throw new FormatException("two"); })).Message);
    }
}
