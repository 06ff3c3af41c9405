using GuideGen.Site.Mapping;

namespace GuideGen.Site.Tests.Mapping;

/// <summary>Parts of a path stand in the order of flow. Places were worked out by hand; no source.</summary>
public sealed class LaneLayoutTests
{
    /// <summary>Parts as <c>id</c> or <c>id:before,before</c>, places as <c>id@column,row</c>.</summary>
    [Theory]
    [InlineData("pump", "pump@0,0")]
    [InlineData("meter turbo:meter cooler:turbo", "meter@0,0 turbo@1,0 cooler@2,0")]
    [InlineData("cooler:turbo turbo:meter meter", "meter@0,0 turbo@1,0 cooler@2,0")]
    [InlineData("battery starter:battery glow:battery plug:glow", "battery@0,0 glow@1,0 starter@1,1 plug@2,0")]
    [InlineData("a b c:b d:a", "a@0,0 b@0,1 d@1,0 c@1,1")]
    [InlineData("a b c e:a,b,c", "a@0,0 b@0,1 c@0,2 e@1,1")]
    [InlineData("pad switch", "pad@0,0 switch@1,0")]
    [InlineData("a b:a valve lamp", "a@0,0 b@1,0 valve@0,1 lamp@1,1")]
    [InlineData("a b c d e f g", "a@0,0 b@1,0 c@2,0 d@3,0 e@4,0 f@5,0 g@0,1")]
    [InlineData("a b:a c:a,b", "a@0,0 b@1,0 c@2,0")]
    public void Parts_stand_after_what_comes_before_them_and_beside_it(string parts, string places)
    {
        var made = LaneLayout.Of([.. parts.Split(' ').Select(p => p.Split(':')).Select(p => new LanePart(p[0], p.Length > 1 ? [.. p[1].Split(',')] : []))]);

        Assert.Equal(places, string.Join(' ', made.Select(p => $"{p.Id}@{p.Column},{p.Row}")));
    }
}
