using Jint;

namespace GuideGen.Search.Tests;

public sealed class LunrScriptTests
{
    [Fact]
    public void The_script_is_the_version_the_index_is_written_for()
    {
        var engine = new Engine();
        engine.Execute(LunrScript.Text);

        Assert.Equal(LunrScript.Version, engine.Evaluate("lunr.version").AsString());
    }

    [Fact]
    public void The_licence_travels_with_the_script() =>
        Assert.Contains("Permission is hereby granted", LunrScript.Licence, StringComparison.Ordinal);
}
