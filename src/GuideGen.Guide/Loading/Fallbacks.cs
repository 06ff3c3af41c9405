using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>What stands in for a file that cannot be read, so that everything else can still be inspected. Never rendered: such a guide has errors.</summary>
static class Fallbacks
{
    static SourceText Nowhere { get; } = new("", "");

    public static SiteSettings Settings { get; } = new(Put("?"), Put("en"), Put("?"), Put(UnitSystem.Metric));

    public static Vehicle Vehicle { get; } = new(
        Put("?"), Put("?"), Put(new YearRange(1900, 2100)), Put("EUR"), Put(0.0), Put("km"), [], [], []);

    static Located<T> Put<T>(T value) => new(value, Nowhere.Top);
}
