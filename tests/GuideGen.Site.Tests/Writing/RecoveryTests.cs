using GuideGen.Site.Writing;
using static GuideGen.Site.Tests.Writing.SiteFolder;

namespace GuideGen.Site.Tests.Writing;

/// <summary>
/// A compile can be killed between any two steps. Each test lays out what it leaves then, and compiles again: the
/// site must be whole, everything of others must be there, and nothing may be left beside it.
/// </summary>
public sealed class RecoveryTests : IDisposable
{
    readonly SiteFolder site = new();

    public void Dispose() => site.Dispose();

    [Fact]
    public void Killed_while_the_new_site_grew()
    {
        WriteOldSite();
        Directory.CreateDirectory(site.Beside("growing"));
        System.IO.File.WriteAllText(Path.Combine(site.Beside("growing"), "half.html"), "half");

        CompileAgain();
    }

    [Fact]
    public void Killed_before_the_exchange()
    {
        WriteOldSite();
        MakeSite("next", "killed");

        CompileAgain();
    }

    [Fact]
    public void Killed_after_the_exchange()
    {
        WriteOldSite();
        MoveOldTo("next");
        MakeSite("", "killed");

        CompileAgain();
    }

    [Fact]
    public void Killed_while_files_of_others_were_carried_over()
    {
        WriteOldSite();
        MoveOldTo("next");
        MakeSite("", "killed");
        System.IO.File.Move(Path.Combine(site.Beside("next"), "CNAME"), site.PathTo("CNAME"));

        CompileAgain();
    }

    [Fact]
    public void Killed_while_the_old_site_was_done_away_with()
    {
        WriteOldSite();
        Directory.CreateDirectory(site.Beside("discarded"));
        // Its list went first: what is left must not pass for files of others.
        System.IO.File.WriteAllText(Path.Combine(site.Beside("discarded"), "stale.html"), "old");

        CompileAgain();
    }

    [Fact]
    public void Killed_between_the_two_renames_of_a_system_that_cannot_exchange()
    {
        WriteOldSite();
        MoveOldTo("previous");
        MakeSite("next", "killed");

        CompileAgain();
    }

    [Fact]
    public void Killed_after_the_two_renames_of_a_system_that_cannot_exchange()
    {
        WriteOldSite();
        MoveOldTo("previous");
        MakeSite("", "killed");

        CompileAgain();
    }

    [Fact]
    public void Killed_after_the_exchange_and_then_the_site_was_deleted()
    {
        WriteOldSite();
        MoveOldTo("next");

        CompileAgain();
    }

    [Fact]
    public void Killed_before_a_first_site_came_to_its_place()
    {
        MakeSite("next", "killed");
        site.Write(File("index.html", "new"));

        Assert.Equal(["out/index.html: new"], site.Everything());
    }

    [Fact]
    public void What_is_recovered_counts_before_anything_is_overwritten()
    {
        WriteOldSite();
        MoveOldTo("previous");

        Assert.Throws<SiteRefusedException>(() => site.Write(File("CNAME", "ours")));
        Assert.Equal(["out/CNAME: theirs", "out/empty/", "out/index.html: old", "out/stale.html: old"], site.Everything());
    }

    void WriteOldSite()
    {
        site.Write(File("index.html", "old"), File("stale.html", "old"));
        site.Lay("CNAME");
        Directory.CreateDirectory(site.PathTo("empty"));
    }

    void CompileAgain()
    {
        site.Write(File("index.html", "new"));

        Assert.Equal(["out/CNAME: theirs", "out/empty/", "out/index.html: new"], site.Everything());
    }

    void MoveOldTo(string state) => Directory.Move(site.Path, site.Beside(state));

    /// <summary>Makes a whole site somewhere else and brings it to the named state, or to the site's own place.</summary>
    void MakeSite(string state, string text)
    {
        var elsewhere = Path.Combine(site.Parent, "elsewhere");
        new FolderTarget(elsewhere, 1).Write([File("index.html", text), File("killed.html", text)]);
        Directory.Move(elsewhere, state.Length == 0 ? site.Path : site.Beside(state));
    }
}
