using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

/// <summary>Files that cannot be shown in a block of a row: wrong bytes, huge, unreadable, invisible characters.</summary>
public sealed class FileTests
{
    const string Page = "content/parts/hose.md";

    static string Text => BaseGuide.Text(Page);

    public static TheoryData<string, byte[], string> Bytes => new()
    {
        { "a byte of Latin-1 in the body", Latin1(Text.Replace("headlamp", "headlämp", StringComparison.Ordinal)), "(8,22): error text-encoding: The file is not valid UTF-8 from here on." },
        { "a replacement character before it is no error", Latin1(Text.Replace("Behind the left headlamp", "\uFFFDehind the left headlämp", StringComparison.Ordinal)), "(8,22): error text-encoding: The file is not valid UTF-8 from here on." },
        { "UTF-16", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(Text)).ToArray(), "(1,1): error text-encoding: The file is not valid UTF-8 from here on." },
        { "a sequence cut short at the end", [.. Encoding.UTF8.GetBytes(Text), 0xE2, 0x82], "(15,1): error text-encoding: The file is not valid UTF-8 from here on." },
        { "an overlong sequence", [.. Encoding.UTF8.GetBytes(Text), 0xC0, 0xAF], "(15,1): error text-encoding: The file is not valid UTF-8 from here on." },
        { "a zero byte, at which YAML would end without a word", Encoding.UTF8.GetBytes(Text.Replace("system", "\0system", StringComparison.Ordinal)), "(4,1): error text-control: The control character U+0000 stands here." },
        { "an escape that a terminal would obey", Encoding.UTF8.GetBytes(Text.Replace("splits", "\u001B[31msplits", StringComparison.Ordinal)), "(14,4): error text-control: The control character U+001B stands here." },
        { "nothing at all", [], "(1,1): error file-empty: The file is empty." },
        { "nothing but a byte order mark", [0xEF, 0xBB, 0xBF], "(1,1): error file-empty: The file is empty." },
        { "nothing but blank lines", Encoding.UTF8.GetBytes(" \r\n\t\r\n"), "(1,1): error file-empty: The file is empty." },
        { "one byte more than is read", Enumerable.Repeat((byte)'a', GuideLimits.TextBytes + 1).ToArray(), "(1,1): error file-too-large: The file has 2049 KiB; at most 2048 KiB are read." },
    };

    [Theory, MemberData(nameof(Bytes))]
    public void A_file_with_wrong_bytes_is_one_finding_at_the_first_of_them(string name, byte[] bytes, string expected)
    {
        Assert.NotEmpty(name);

        var findings = BaseGuide.InspectWith(Page, bytes);

        Assert.Equal([Page + expected], findings.Select(FindingFormatter.ToLine));
    }

    [Theory, InlineData("\n"), InlineData("\r\n"), InlineData("\r")]
    public void A_page_of_a_megabyte_is_read_to_its_last_line(string lineEnd)
    {
        var text = new StringBuilder(Text);
        while (text.Length < 1024 * 1024) text.Append("It splits along the clip, where the oil stands.\n");
        text.Append("See P4299.\n");
        var lines = text.ToString().Count(c => c == '\n');

        var findings = BaseGuide.InspectWith(Page, text.Replace("\n", lineEnd).ToString());

        Assert.Equal([$"{Page}({lines},5): error code-structure: 'P4299' is not a possible code: its second character is '4', not 0 to 3."], findings.Select(FindingFormatter.ToLine));
    }

    [Fact]
    public void Mixed_line_ends_count_as_an_editor_counts_them()
    {
        var text = Text.Replace("It leads the air.\n", "One\rtwo\r\nthree\n\rfour P4299.\n", StringComparison.Ordinal);

        var findings = BaseGuide.InspectWith(Page, text);

        Assert.Equal("(15,6)", Assert.Single(findings).Span.From.ToString());
    }

    [Fact]
    public void A_page_of_a_hundred_thousand_equal_headings_does_not_hang()
    {
        var text = Text + string.Concat(Enumerable.Repeat("### a\n", 100_000)) + "[last](#a-100000), [beyond](#a-100001)\n";

        var findings = BaseGuide.InspectWith(Page, text);

        Assert.Equal(["anchor-missing"], findings.Select(f => f.Rule.Id));
    }

    [Fact]
    public void A_file_that_cannot_be_read_says_why()
    {
        var loaded = GuideLoader.Load(new LockedFiles());

        Assert.Contains("content/vehicle.yml(1,1): error file-unreadable: The file cannot be read: no permission.", loaded.Findings.Select(FindingFormatter.ToLine));
    }

    [Fact]
    public void A_folder_yields_its_files_in_order_without_hidden_ones_and_without_links_that_lead_elsewhere()
    {
        var folder = Directory.CreateTempSubdirectory("guide-").FullName;
        try
        {
            string[] files = ["site-config.yml", "site-config.de.yml", "README.md", "notes.yml", "content/vehicle.yml", "content/faults/b/x.md", "content/faults/a.md", "content/.draft/y.md", "content/faults/.z.md"];
            foreach (var file in files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, file))!);
                File.WriteAllText(Path.Combine(folder, file), "x");
            }

            File.CreateSymbolicLink(Path.Combine(folder, "content", "faults", "link.md"), Path.Combine(folder, "README.md"));
            var found = new FolderFiles(folder);

            Assert.Equal(["content/faults/a.md", "content/faults/b/x.md", "content/vehicle.yml", "site-config.de.yml", "site-config.yml"], found.Paths.Order(StringComparer.Ordinal));
            Assert.True(found.TryRead("content/faults/a.md", out var bytes, out _));
            Assert.Equal("x"u8.ToArray(), bytes);
            Assert.False(found.TryRead("content/faults/gone.md", out _, out var why));
            Assert.Equal("it vanished or is locked", why);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_file_has_a_stamp_once_it_was_left_alone_for_a_moment()
    {
        using var temp = new TempFolder();
        temp.Write("site-config.yml", "title: x");
        temp.Write("content/vehicle.yml", "name: x");
        var now = new DateTimeOffset(2026, 6, 1, 12, 0, 0, TimeSpan.Zero);
        File.SetLastWriteTimeUtc(temp.PathTo("site-config.yml"), now.UtcDateTime.AddSeconds(-1));
        File.SetLastWriteTimeUtc(temp.PathTo("content/vehicle.yml"), now.UtcDateTime.AddSeconds(-3));

        var files = new FolderFiles(temp.PathTo(), new SetClock(now));

        Assert.Null(files.StampOf("site-config.yml"));
        Assert.Equal(new FileStamp(7, now.UtcDateTime.AddSeconds(-3).Ticks), files.StampOf("content/vehicle.yml"));
        Assert.Null(new FolderFiles(temp.PathTo()).StampOf("content/vehicle.yml"));
    }

    [Fact]
    public void A_file_with_the_stamp_of_before_is_not_even_opened()
    {
        using var temp = new TempFolder();
        foreach (var (path, content) in BaseGuide.Files()) File.WriteAllBytes(temp.Write(path, ""), content);
        var settled = new SetClock(DateTimeOffset.UtcNow.AddMinutes(1));
        SittingMemory memory = new();
        GuideLoader.Load(new FolderFiles(temp.PathTo(), settled), memory);
        var part = temp.PathTo("content", "parts", "hose.md");
        var written = File.GetLastWriteTimeUtc(part);

        File.WriteAllText(part, File.ReadAllText(part).Replace("clip", "edge", StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(part, written);
        var unseen = GuideLoader.Load(new FolderFiles(temp.PathTo(), settled), memory);
        File.SetLastWriteTimeUtc(part, written.AddSeconds(1));
        var seen = GuideLoader.Load(new FolderFiles(temp.PathTo(), settled), memory);

        Assert.DoesNotContain("the edge", unseen.Guide.Parts.Find("hose")!.Origin.Source.Text, StringComparison.Ordinal);
        Assert.Contains("the edge", seen.Guide.Parts.Find("hose")!.Origin.Source.Text, StringComparison.Ordinal);
    }

    sealed class SetClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }

    static byte[] Latin1(string text) =>
        [.. text.EnumerateRunes().SelectMany(r => r.Value == 0xE4 ? [0xE4] : Encoding.UTF8.GetBytes(r.ToString()))];

    sealed class LockedFiles : IGuideFiles
    {
        public IReadOnlyList<string> Paths { get; } = [.. BaseGuide.Files().Keys.Order(StringComparer.Ordinal)];

        public bool TryRead(string path, out byte[] bytes, out string why)
        {
            var isLocked = path == "content/vehicle.yml";
            (bytes, why) = (isLocked ? [] : BaseGuide.Files()[path], isLocked ? "no permission" : "");
            return !isLocked;
        }
    }
}
