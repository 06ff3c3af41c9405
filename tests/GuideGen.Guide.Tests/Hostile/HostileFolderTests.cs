using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests.Hostile;

/// <summary>Folders with links, pipes, and files that go, grow or are beyond all measure.</summary>
public sealed class HostileFolderTests : IDisposable
{
    readonly TempFolder temp = new();

    public HostileFolderTests()
    {
        temp.Write("guide/site-config.yml", "title: x\n");
        temp.Write("guide/content/parts/hose.md", "x");
        temp.Write("secret/private.md", "secret");
        temp.Write("secret/site-config.yml", "secret");
    }

    public void Dispose() => temp.Dispose();

    /// <summary>Where a link stands, and where it leads.</summary>
    public static TheoryData<string, string> Links => new()
    {
        { "guide/content/parts/x.md", "secret/private.md" },
        { "guide/content/parts/y.md", "guide/content/parts/hose.md" },
        { "guide/content/parts/more", "secret" },
        { "guide/content/faults", "secret" },
        { "guide/content/images", "/etc" },
        { "guide/content/loop", "guide/content" },
        { "guide/content/parts/gone.md", "secret/nothing.md" },
        { "guide/content/parts/zero.md", "/dev/zero" },
        { "guide/theme", "secret" },
        { "guide/theme/templates", "secret" },
        { "guide/site-config.de.yml", "secret/site-config.yml" },
    };

    [Theory, MemberData(nameof(Links))]
    public void A_link_is_no_part_of_a_guide_wherever_it_leads(string link, string target)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(temp.PathTo(link.Split('/')))!);
        File.CreateSymbolicLink(temp.PathTo(link.Split('/')), target[0] == '/' ? target : temp.PathTo(target.Split('/')));

        var guide = new FolderFiles(temp.PathTo("guide"));
        Assert.Equal(["content/parts/hose.md", "site-config.yml"], guide.Paths);
        Assert.Equal([link["guide/".Length..]], GuideLoader.Load(guide).Findings.Where(f => f.Rule == Rules.FileLinked).Select(f => f.Span.Path));
    }

    [Theory, InlineData("content"), InlineData("site-config.yml")]
    public void A_guide_whose_main_pieces_are_links_has_none_of_them(string piece)
    {
        var path = temp.PathTo("guide", piece);
        if (piece == "content") Directory.Delete(path, recursive: true);
        else File.Delete(path);
        File.CreateSymbolicLink(path, temp.PathTo("secret", piece == "content" ? "" : piece));

        var guide = new FolderFiles(temp.PathTo("guide"));
        Assert.DoesNotContain(guide.Paths, p => p.StartsWith(piece, StringComparison.Ordinal));
        Assert.Contains(GuideLoader.Load(guide).Findings, f => f.Rule == Rules.FileLinked && f.Span.Path == piece);
    }

    [Fact]
    public void A_folder_that_cannot_be_opened_is_told_and_not_passed_over()
    {
        Assert.SkipWhen(Environment.IsPrivilegedProcess, "Whoever may open everything is kept out of nothing.");
        if (OperatingSystem.IsWindows()) return;
        var path = temp.PathTo("guide", "content", "parts");
        File.SetUnixFileMode(path, UnixFileMode.None);

        var findings = GuideLoader.Load(new FolderFiles(temp.PathTo("guide"))).Findings;

        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Equal(["content/parts"], findings.Where(f => f.Rule == Rules.FileUnreadable).Select(f => f.Span.Path));
    }

    [Fact]
    public void A_pipe_holds_up_nobody()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Folders hold no pipes there.");
        using (var make = System.Diagnostics.Process.Start("mkfifo", [temp.PathTo("guide", "content", "parts", "pipe.md")])) make.WaitForExit();
        var guide = new FolderFiles(temp.PathTo("guide"));

        Assert.Contains("content/parts/pipe.md", guide.Paths);
        Assert.True(guide.TryRead("content/parts/pipe.md", out var bytes, out _));
        Assert.Empty(bytes);
    }

    [Fact]
    public void Of_a_file_beyond_all_measure_only_its_beginning_is_read()
    {
        using (var huge = File.Create(temp.PathTo("guide", "content", "parts", "huge.md"))) huge.SetLength(50L << 30);

        Assert.True(new FolderFiles(temp.PathTo("guide")).TryRead("content/parts/huge.md", out var bytes, out _));
        Assert.Equal((GuideLimits.PictureMebibytes << 20) + 1, bytes.Length);
        Assert.Contains(GuideLoader.Load(new FolderFiles(temp.PathTo("guide"))).Findings, f => f.Span.Path == "content/parts/huge.md" && f.Rule.Id == "file-too-large");
    }

    [Fact]
    public void A_file_that_goes_between_listing_and_reading_is_told_and_no_more()
    {
        var guide = new FolderFiles(temp.PathTo("guide"));
        File.Delete(temp.PathTo("guide", "content", "parts", "hose.md"));

        Assert.Contains(GuideLoader.Load(guide).Findings, f => f.Span.Path == "content/parts/hose.md" && f.Rule.Id == "file-unreadable");
    }
}
