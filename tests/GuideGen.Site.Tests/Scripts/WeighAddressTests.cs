using System.Text.Json;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.Scripts;

/// <summary>What is known of a vehicle, in the address of the page that weighs causes: from anybody, so anything may be in it.</summary>
public sealed class WeighAddressTests : IDisposable
{
    readonly SiteScripts scripts = new(CompiledSite.Of(Guides.Small), "assets/weigh-address.js");

    public void Dispose() => scripts.Dispose();

    [Theory]
    [InlineData("#w1;v=w20d;c=P0101.P0299;n=P0401;s=reduced-power;a=black-smoke;r=1;o=look-over:leak;t=torch;p=engine-warm")]
    [InlineData("#w1;c=U0100")]
    [InlineData("#w1;a=black-smoke.white-smoke")]
    [InlineData("")]
    public void What_is_read_is_written_the_same(string fragment) => Assert.Equal(fragment, ThereAndBack(fragment));

    [Theory]
    [InlineData("#w1;c=P0299.P0101", "#w1;c=P0101.P0299")]
    [InlineData("#w1;s=b;v=x;c=P0299", "#w1;v=x;c=P0299;s=b")]
    public void The_same_answers_have_one_address(string given, string written) => Assert.Equal(written, ThereAndBack(given));

    [Theory]
    [InlineData("#w2;c=P0299", "")]
    [InlineData("#w1", "")]
    [InlineData("#text=P0299", "")]
    [InlineData("#w1;c=p0299.P029.P02999.<img src=x>.P0299", "#w1;c=P0299")]
    [InlineData("#w1;s=../x.%22onload%3D.__proto__.ok", "#w1;s=ok")]
    [InlineData("#w1;v=a b;r=yes;x=1;constructor=1;__proto__=1", "")]
    [InlineData("#w1;o=check.check:.:seen.check:seen.a:b:c", "#w1;o=check:seen")]
    [InlineData("#w1;;;;c=;=;c", "")]
    public void What_is_not_written_exactly_so_is_left_out(string hostile, string left) => Assert.Equal(left, ThereAndBack(hostile));

    [Fact]
    public void A_fragment_beyond_measure_is_not_read() =>
        Assert.Equal("", ThereAndBack("#w1;c=" + string.Join('.', Enumerable.Repeat("P0299", 2_000))));

    string ThereAndBack(string fragment)
    {
        var state = scripts.Call<JsonElement>("GuideGen.weighAddress.read", fragment);
        return scripts.Call<string>("GuideGen.weighAddress.write", state);
    }
}
