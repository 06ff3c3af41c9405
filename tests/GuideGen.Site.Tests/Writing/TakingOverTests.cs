using GuideGen.Guide.Text;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;

namespace GuideGen.Site.Tests.Writing;

/// <summary>A file whose basis is that of the last compile is taken over, if it is still what that compile wrote.</summary>
public sealed class TakingOverTests : IDisposable
{
    static readonly Digest Same = Digest.Of([1]), Other = Digest.Of([2]);

    readonly SiteFolder site = new();
    int made;

    public void Dispose() => site.Dispose();

    [Fact]
    public void A_file_of_the_same_basis_is_not_made_again()
    {
        Write(Made("a/b.html", Same), Made("c.html", null));
        Write(Made("a/b.html", Same), Made("c.html", null));

        Assert.Equal(("1", "3"), (Text("a/b.html"), Text("c.html")));
    }

    [Fact]
    public void A_file_of_another_basis_is()
    {
        Write(Made("a.html", Same));
        Write(Made("a.html", Other));
        Write(Made("a.html", Same));

        Assert.Equal("3", Text("a.html"));
    }

    [Theory, InlineData("origins"), InlineData("site")]
    public void Without_what_the_last_compile_left_everything_is_made(string lost)
    {
        Write(Made("a.html", Same));
        if (lost == "site") Directory.Delete(site.Path, recursive: true);
        else File.Delete(site.Beside(lost));
        Write(Made("a.html", Same));

        Assert.Equal("2", Text("a.html"));
    }

    [Fact]
    public void A_file_that_was_deleted_is_made_again()
    {
        Write(Made("a.html", Same), Made("b.html", Same));
        File.Delete(site.PathTo("a.html"));
        Write(Made("a.html", Same), Made("b.html", Same));

        Assert.Equal(("3", "2"), (Text("a.html"), Text("b.html")));
    }

    [Fact]
    public void A_file_that_was_changed_is_somebodys_and_refused_as_ever()
    {
        Write(Made("a.html", Same));
        File.WriteAllText(site.PathTo("a.html"), "mine");

        Assert.Throws<SiteRefusedException>(() => Write(Made("a.html", Same)));
        Assert.Equal("mine", Text("a.html"));
    }

    [Fact]
    public void A_file_that_stands_elsewhere_now_is_made_there()
    {
        Write(Made("a.html", Same));
        Write(Made("b.html", Same));

        Assert.Equal("2", Text("b.html"));
        Assert.False(File.Exists(site.PathTo("a.html")));
    }

    [Theory, InlineData(""), InlineData("x\n"), InlineData("00 00 a.html\n"), InlineData("\0\0\0")]
    public void Origins_that_no_compile_wrote_say_nothing(string text)
    {
        Write(Made("a.html", Same));
        File.WriteAllText(site.Beside("origins"), text);
        Write(Made("a.html", Same));

        Assert.Equal("2", Text("a.html"));
    }

    [Fact]
    public void A_file_that_is_gone_can_neither_be_linked_nor_copied()
    {
        Directory.CreateDirectory(site.Path);

        Assert.False(HardLink.TryCreateOrCopy(site.PathTo("gone"), site.PathTo("here")));
        Assert.False(File.Exists(site.PathTo("here")));
    }

    [Fact]
    public void Where_a_name_is_taken_the_file_is_copied_over_it()
    {
        site.Lay("a", "one");
        site.Lay("b", "other");

        Assert.True(HardLink.TryCreateOrCopy(site.PathTo("a"), site.PathTo("b")));
        File.WriteAllText(site.PathTo("a"), "changed");

        Assert.Equal("one", Text("b"));
    }

    /// <summary>One file after the other.</summary>
    void Write(params SiteFile[] files) => new FolderTarget(site.Path, 1).Write(files);

    /// <summary>Its text says how many files had been made when it was.</summary>
    SiteFile Made(string address, Digest? basis) => new(address, () => System.Text.Encoding.UTF8.GetBytes($"{Interlocked.Increment(ref made)}")) { Basis = basis is { } known ? new(known) : null };

    string Text(string address) => File.ReadAllText(site.PathTo(address));
}
