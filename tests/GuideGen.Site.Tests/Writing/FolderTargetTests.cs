using GuideGen.Site.Writing;
using static GuideGen.Site.Tests.Writing.SiteFolder;

namespace GuideGen.Site.Tests.Writing;

public sealed class FolderTargetTests : IDisposable
{
    readonly SiteFolder site = new();

    public void Dispose() => site.Dispose();

    [Fact]
    public void A_first_compile_writes_the_files_and_leaves_nothing_beside_them()
    {
        site.Write(File("index.html", "one"), File("faults/hose.html", "two"));

        Assert.Equal(["out/faults/hose.html: two", "out/index.html: one"], site.Everything());
    }

    [Fact]
    public void A_second_compile_replaces_files_and_removes_stale_ones()
    {
        site.Write(File("index.html", "old"), File("faults/hose.html", "stale"));
        site.Write(File("index.html", "new"));

        Assert.Equal(["out/index.html: new"], site.Everything());
    }

    [Theory]
    [InlineData("CNAME")]
    [InlineData(".git/refs/heads/main")]
    [InlineData("faults/photo.jpg")]
    [InlineData("faults/mine/photo.jpg")]
    [InlineData("guide-files.txt.bak")]
    public void Files_of_others_stay(string address)
    {
        site.Write(File("faults/hose.html", "old"), File("index.html", "old"));
        site.Lay(address);
        site.Write(File("index.html", "new"));

        Assert.Equal(new[] { $"out/{address}: theirs", "out/index.html: new" }.Order(StringComparer.Ordinal), site.Everything());
    }

    [Fact]
    public void Empty_folders_of_others_stay_and_empty_folders_of_ours_go()
    {
        site.Write(File("faults/hose.html", "old"), File("index.html", "old"));
        site.Lay(".git/HEAD");
        Directory.CreateDirectory(site.PathTo(".git/refs/tags"));
        Directory.CreateDirectory(site.PathTo("faults/theirs"));
        site.Write(File("index.html", "new"));

        Assert.Equal(["out/.git/HEAD: theirs", "out/.git/refs/tags/", "out/faults/theirs/", "out/index.html: new"], site.Everything());
    }

    [Fact]
    public void Links_of_others_stay_links_and_what_is_behind_them_stays_where_it_is()
    {
        site.Write(File("index.html", "old"));
        var album = Directory.CreateDirectory(Path.Combine(site.Parent, "album")).FullName;
        System.IO.File.WriteAllText(Path.Combine(album, "photo.jpg"), "a photo");
        Directory.CreateSymbolicLink(site.PathTo("photos"), album);
        System.IO.File.CreateSymbolicLink(site.PathTo("nowhere"), "not-there");
        Directory.CreateSymbolicLink(site.PathTo("round"), ".");
        site.Write(File("index.html", "new"));

        Assert.Equal(["album/photo.jpg: a photo", "out/index.html: new", "out/nowhere -> not-there", $"out/photos -> {album}", "out/round -> ."], site.Everything());
    }

    [Fact]
    public void A_link_in_the_place_of_one_of_our_folders_is_not_followed()
    {
        site.Write(File("faults/hose.html", "old"), File("index.html", "old"));
        var album = Directory.CreateDirectory(Path.Combine(site.Parent, "album")).FullName;
        System.IO.File.WriteAllText(Path.Combine(album, "photo.jpg"), "a photo");
        Directory.Delete(site.PathTo("faults"), recursive: true);
        Directory.CreateSymbolicLink(site.PathTo("faults"), album);
        site.Write(File("index.html", "new"));

        Assert.Equal(["album/photo.jpg: a photo", $"out/faults -> {album}", "out/index.html: new"], site.Everything());
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("faults")]
    [InlineData("faults/hose.html")]
    [InlineData("faults/hose.html/inner")]
    [InlineData("guide-files.txt")]
    public void Nothing_of_others_is_overwritten(string address)
    {
        site.Lay(address);
        var before = site.Everything();

        var refusal = Assert.Throws<SiteRefusedException>(() => site.Write(File("index.html", "new"), File("faults/hose.html", "new")));

        Assert.Contains(address.Replace("/inner", "", StringComparison.Ordinal) + ".", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, site.Everything());
        Assert.Equal("theirs", System.IO.File.ReadAllText(site.PathTo(address)));
    }

    [Fact]
    public void A_file_that_was_changed_since_the_compile_is_not_overwritten()
    {
        site.Write(File("index.html", "old"));
        site.Lay("index.html", "mended by hand");

        Assert.Throws<SiteRefusedException>(() => site.Write(File("index.html", "new")));
        Assert.Equal(["out/index.html: mended by hand"], site.Everything());
    }

    [Fact]
    public void A_stale_file_that_was_changed_since_the_compile_is_kept()
    {
        site.Write(File("index.html", "old"), File("faults/hose.html", "old"));
        site.Lay("faults/hose.html", "mended by hand");
        site.Write(File("index.html", "new"));

        Assert.Equal(["out/faults/hose.html: mended by hand", "out/index.html: new"], site.Everything());
    }

    [Fact]
    public void The_refusal_names_at_most_five_files()
    {
        var files = Enumerable.Range(1, 7).Select(i => $"{i}.html").ToList();
        foreach (var file in files) site.Lay(file);

        var refusal = Assert.Throws<SiteRefusedException>(() => site.Write([.. files.Select(f => File(f, "new"))]));

        Assert.Contains("1.html, 2.html, 3.html, 4.html, 5.html and 2 more", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_good_site_stays_when_a_page_cannot_be_made()
    {
        site.Write(File("index.html", "old"));

        Assert.Throws<InvalidDataException>(() => site.Write(File("index.html", "new"), new("bad.html", () => throw new InvalidDataException())));
        Assert.Equal(["out/index.html: old"], site.Everything());
    }

    [Fact]
    public void Two_compiles_do_not_write_one_site_at_a_time()
    {
        SiteRefusedException? refusal = null;
        site.Write(new Rendering.SiteFile("index.html", () =>
        {
            refusal = Assert.Throws<SiteRefusedException>(() => site.Write(File("index.html", "second")));
            return "first"u8.ToArray();
        }));

        Assert.Contains("another compile is writing", refusal!.Message, StringComparison.Ordinal);
        Assert.Equal(["out/index.html: first"], site.Everything());
    }

    [Fact]
    public void A_site_folder_whose_parents_are_missing_is_made()
    {
        var deep = Path.Combine(site.Parent, "a", "b", "out");

        new FolderTarget(deep, 1).Write([File("index.html", "one")]);

        Assert.Equal(["a/b/out/index.html: one"], site.Everything());
    }

    [Fact]
    public void A_parent_that_cannot_be_written_is_named_with_the_reason()
    {
        System.IO.File.WriteAllText(Path.Combine(site.Parent, "file"), "");

        var fault = Assert.Throws<IOException>(() => new FolderTarget(Path.Combine(site.Parent, "file", "out"), 1).Write([File("index.html", "one")]));

        Assert.StartsWith($"nothing can be written in {Path.Combine(site.Parent, "file")}, where the site grows", fault.Message, StringComparison.Ordinal);
    }
}
