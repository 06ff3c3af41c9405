using GuideGen.Site.Licences;

namespace GuideGen.Tests;

public sealed class LicencesTests
{
    [Fact]
    public void Every_package_of_the_tool_is_listed_and_the_text_of_every_licence_named_stands_once()
    {
        var run = Tool.Run(Path.GetTempPath(), "licences");

        Assert.Equal(0, run.Code);
        var packages = ShippedPackage.Of(typeof(CommandLine).Assembly);
        Assert.Superset(new HashSet<string> { "Markdig", "Scriban.Signed", "SkiaSharp", "Spectre.Console", "System.CommandLine", "YamlDotNet" }, packages.Select(p => p.Name).ToHashSet());
        Assert.All(packages, p => Assert.Contains($"\n{p.Name} {p.Version}, {p.Licence}, {p.Holder}, ", run.Out, StringComparison.Ordinal));
        Assert.All(packages.Select(p => p.Licence).Distinct(), id => Assert.Single(run.Out.Split('\n'), l => l == $"== {id}"));
        Assert.Contains("Redistributions in binary form must reproduce the above copyright", run.Out, StringComparison.Ordinal);
    }
}
