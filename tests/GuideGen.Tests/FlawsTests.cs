using System.Diagnostics;
using GuideGen.Testing;

namespace GuideGen.Tests;

/// <summary>The question for known flaws, with registries that answer as the test says.</summary>
public sealed class FlawsTests : IDisposable
{
    const string Keeping = """{ "resources": [{ "@type": "VulnerabilityInfo/6.7.0" }] }""";

    const string Clean = """{ "metadata": { "vulnerabilities": { "total": 0 } }, "vulnerabilities": {} }""";

    readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void Nothing_known_is_good()
    {
        var run = Ask(Listed(Keeping, ""), Clean);

        Assert.Equal((0, "0 known flaws\n"), (run.Code, run.Out));
    }

    [Fact]
    public void A_flaw_of_a_package_that_another_one_brings_fails_and_is_told_once()
    {
        const string Flaw = """{ "id": "Gauge", "resolvedVersion": "1.0.0", "vulnerabilities": [{ "severity": "High", "advisoryurl": "https://example.org/1" }] }""";

        var run = Ask(Listed(Keeping, $$"""{ "frameworks": [{ "transitivePackages": [{{Flaw}}] }, { "topLevelPackages": [{{Flaw}}] }] }"""), Clean);

        Assert.Equal((1, "flaw: Gauge 1.0.0: High, https://example.org/1\n1 known flaws\n"), (run.Code, run.Out));
    }

    [Fact]
    public void A_flaw_of_a_script_fails()
    {
        var run = Ask(Listed(Keeping, ""), """{ "metadata": {}, "vulnerabilities": { "gauge": { "name": "gauge", "severity": "low", "range": "<2.0.0" } } }""");

        Assert.Equal((1, "flaw: gauge <2.0.0: low\n1 known flaws\n"), (run.Code, run.Out));
    }

    [Fact]
    public void Registries_that_keep_no_list_or_do_not_answer_are_named()
    {
        var run = Ask(Listed("""{ "resources": [{ "@type": "PackageBaseAddress/3.0.0" }] }""", ""), """{ "message": "405 Method Not Allowed" }""");
        var silent = Ask("no source at all", "");

        Assert.Equal((0, "not asked for flaws: NuGet: no source keeps a list of flaws\nnot asked for flaws: npm, src/Room/npm: 405 Method Not Allowed\n0 known flaws\n"), (run.Code, run.Out));
        Assert.Equal((0, "not asked for flaws: NuGet: dotnet list gave no answer\nnot asked for flaws: npm, src/Room/npm: no answer\n0 known flaws\n"), (silent.Code, silent.Out));
    }

    /// <summary>What <c>dotnet list package --vulnerable --format json</c> says, with a source whose index is in its address.</summary>
    static string Listed(string index, string projects) => $$"""{ "sources": ["data:application/json,{{Uri.EscapeDataString(index)}}"], "projects": [{{projects}}] }""";

    ToolRun Ask(string listed, string audited)
    {
        temp.Write("src/Room/npm/package-lock.json", "{}");
        temp.Write("listed", listed);
        temp.Write("audited", audited);
        foreach (var (program, answer) in new[] { ("dotnet", "listed"), ("npm", "audited") })
        {
            var path = temp.Write($"programs/{program}", $"#!/bin/sh\ncat '{temp.PathTo(answer)}'\n");
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        var start = new ProcessStartInfo("node", [Repository.PathTo(".ci/flaws.mjs")]) { WorkingDirectory = temp.PathTo() };
        start.Environment["PATH"] = temp.PathTo("programs") + Path.PathSeparator + start.Environment["PATH"];
        return Tool.RunScript(start);
    }
}
