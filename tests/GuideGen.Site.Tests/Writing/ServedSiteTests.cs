using System.Globalization;
using static GuideGen.Site.Tests.Writing.SiteFolder;

namespace GuideGen.Site.Tests.Writing;

/// <summary>A site that is read, as a server reads it, while compiles replace it.</summary>
public sealed class ServedSiteTests : IDisposable
{
    const int Pages = 12, Compiles = 60, Readers = 3;

    readonly SiteFolder site = new();

    public void Dispose() => site.Dispose();

    [Fact]
    public async Task Whoever_reads_gets_whole_pages_and_never_an_older_one_than_before()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "Other systems cannot exchange two folders in one step.");
        Write(0);
        using var done = new CancellationTokenSource();
        var readers = Enumerable.Range(0, Readers).Select(r => Task.Run(() => Read(r, done.Token), TestContext.Current.CancellationToken)).ToList();

        for (var version = 1; version <= Compiles; version++) Write(version);
        await done.CancelAsync();

        var reads = await Task.WhenAll(readers);
        Assert.All(reads, r => Assert.True(r.Count > Compiles && r.Versions > 3 && r.Missed * 1_000 <= r.Count, $"{r}"));
        Assert.All(Enumerable.Range(0, Pages), p => Assert.Equal(Page(p, Compiles), System.IO.File.ReadAllText(site.PathTo(Address(p)))));
    }

    void Write(int version) => site.Write([.. Enumerable.Range(0, Pages).Select(p => File(Address(p), Page(p, version)))]);

    /// <returns>How many pages were asked for, how many were not there, and of how many versions they were.</returns>
    (int Count, int Missed, int Versions) Read(int reader, CancellationToken done)
    {
        var (count, missed, seen) = (0, 0, new List<int> { 0 });
        while (!done.IsCancellationRequested)
        {
            var page = (reader + count++) % Pages;
            if (TextOf(site.PathTo(Address(page))) is not { } text)
            {
                missed++;
                continue;
            }

            var version = int.Parse(text.AsSpan(0, text.IndexOf(' ', StringComparison.Ordinal)), CultureInfo.InvariantCulture);
            Assert.Equal(Page(page, version), text);
            Assert.True(version >= seen[^1], $"version {version} after {seen[^1]}");
            if (version > seen[^1]) seen.Add(version);
        }

        return (count, missed, seen.Count);
    }

    /// <summary>The way to a file is looked up step by step: whoever is between two steps in the instant of the exchange may find nothing there.</summary>
    static string? TextOf(string path)
    {
        try
        {
            return System.IO.File.ReadAllText(path);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    static string Address(int page) => $"faults/{page}.html";

    static string Page(int page, int version) => $"{version} {string.Concat(Enumerable.Repeat($"{page} of {version}. ", 5_000))}</html>";
}
