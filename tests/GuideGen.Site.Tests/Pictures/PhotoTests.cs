using System.Text;
using CsCheck;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Loading;
using GuideGen.Site.Rendering;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Writing;
using SkiaSharp;

namespace GuideGen.Site.Tests.Pictures;

/// <summary>A photo goes onto the site upright, in sensible sizes, and says nothing of where it was taken.</summary>
public sealed class PhotoTests
{
    static readonly string[] Endings = ["jpg", "png", "webp"];

    const string Page = "parts/charge-air-hose.html";

    [Theory]
    [InlineData("jpg", 3000, 1500, "images/hose.480.jpg 480x240, images/hose.960.jpg 960x480, images/hose.jpg 1600x800")]
    [InlineData("png", 960, 100, "images/hose.480.png 480x50, images/hose.png 960x100")]
    [InlineData("webp", 200, 100, "images/hose.webp 200x100")]
    public void It_comes_in_sizes_that_pages_use(string ending, int width, int height, string expected)
    {
        var site = WithPhoto("hose." + ending, Photos.Make(width, height, FormatOf(ending)));

        var sizes = site.Files.Where(f => f.Key.StartsWith("images/hose.", StringComparison.Ordinal)).Select(f =>
        {
            using var picture = SKBitmap.Decode(f.Value);
            return (picture.Width, Text: $"{f.Key} {picture.Width}x{picture.Height}");
        });
        Assert.Equal(expected, string.Join(", ", sizes.OrderBy(s => s.Width).Select(s => s.Text)));
    }

    [Fact]
    public void The_page_keeps_its_place_and_offers_every_size()
    {
        var image = WithPhoto("hose.jpg", Photos.Make(3000, 1500, SKEncodedImageFormat.Jpeg)).Pages[Page].Document.QuerySelector("img")!;

        Assert.Equal(("../images/hose.jpg", "1600", "800"), (image.GetAttribute("src"), image.GetAttribute("width"), image.GetAttribute("height")));
        Assert.Equal("../images/hose.480.jpg 480w, ../images/hose.960.jpg 960w, ../images/hose.jpg 1600w", image.GetAttribute("srcset"));
    }

    // EXIF orientation 6: the camera was turned, so that the left half of the file is the upper half of the picture (CIPA DC-008 4.6.4).
    [Fact]
    public void A_photo_of_a_turned_phone_stands_upright_and_its_position_is_gone()
    {
        var photo = Photos.FromPhone(400, 200, 6);
        var site = WithPhoto("hose.jpg", photo);
        var written = site.Files["images/hose.jpg"];
        using var picture = SKBitmap.Decode(written);

        Assert.Contains("Wexcombe", Encoding.Latin1.GetString(photo), StringComparison.Ordinal);
        Assert.DoesNotContain("Wexcombe", Encoding.Latin1.GetString(written), StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(written), StringComparison.Ordinal);
        Assert.Equal((200, 400), (picture.Width, picture.Height));
        Assert.True(picture.GetPixel(100, 50) is { Red: > 200, Blue: < 60 } && picture.GetPixel(100, 350) is { Red: < 60, Blue: > 200 });
    }

    [Theory]
    [InlineData(1, 400, 200, "red left")]
    [InlineData(2, 400, 200, "red right")]
    [InlineData(3, 400, 200, "red right")]
    [InlineData(4, 400, 200, "red left")]
    [InlineData(5, 200, 400, "red top")]
    [InlineData(6, 200, 400, "red top")]
    [InlineData(7, 200, 400, "red bottom")]
    [InlineData(8, 200, 400, "red bottom")]
    public void All_eight_ways_to_hold_a_camera_are_turned_back(byte orientation, int width, int height, string expected)
    {
        using var picture = SKBitmap.Decode(WithPhoto("hose.jpg", Photos.FromPhone(400, 200, orientation)).Files["images/hose.jpg"]);

        var places = new Dictionary<string, (int X, int Y)> { ["left"] = (10, height / 2), ["right"] = (width - 10, height / 2), ["top"] = (width / 2, 10), ["bottom"] = (width / 2, height - 10) };
        Assert.Equal((width, height), (picture.Width, picture.Height));
        var (x, y) = places[expected["red ".Length..]];
        Assert.True(picture.GetPixel(x, y) is { Red: > 200, Blue: < 60 });
        Assert.True(picture.GetPixel(width - x == x ? x : width - x, height - y == y ? y : height - y) is { Red: < 60, Blue: > 200 });
    }

    [Fact]
    public void An_author_is_told_that_a_photo_tells_its_position()
    {
        var findings = Inspect(Photos.FromPhone(40, 20, 1));

        Assert.Equal(["content/images/hose.jpg(1,1)"], findings.Where(f => f.Rule == Rules.ImagePosition).Select(f => $"{f.Span}"));
    }

    [Fact]
    public void A_photo_with_more_pixels_than_a_machine_should_unpack_is_refused_by_its_head()
    {
        var photo = Photos.Make(10, 10, SKEncodedImageFormat.Png);
        photo[18] = 0xFF;
        photo[22] = 0xFF;

        Assert.Contains(Inspect(photo), f => f.Rule == Rules.ImageLarge);
    }

    // A cut in the head is seen by the inspection, one behind it when the photo is unpacked.
    [Theory]
    [InlineData("jpg")]
    [InlineData("png")]
    [InlineData("webp")]
    public void Of_a_photo_that_is_cut_off_anywhere_nothing_is_shown(string ending)
    {
        var photo = Photos.Make(600, 300, FormatOf(ending));
        int[] lengths = [0, 1, 20, 50, 100, photo.Length / 4, photo.Length / 2, photo.Length * 3 / 4];

        Assert.All(lengths, length =>
        {
            var target = new MemoryTarget(2);
            var result = SiteCompiler.Compile(Guide("hose." + ending, photo[..length]), ThemeFiles.BuiltIn, target, new CompiledSite.Unheard());
            Assert.Equal(["content/images/hose." + ending], result.Findings.Where(f => f.Rule == Rules.ImageUnreadable || f.Rule == Rules.ImageBroken).Select(f => f.Span.Path));
            Assert.False(result.IsWritten);
        });
    }

    [Fact]
    public void Whatever_bytes_of_a_photo_are_wrong_it_is_drawn_or_found_and_the_compile_does_not_break()
    {
        var photos = Endings.ToDictionary(e => e, e => Photos.Make(90, 60, FormatOf(e)));

        Gen.Select(Gen.Int[0, Endings.Length - 1].Select(i => Endings[i]), Gen.Select(Gen.Double[0, 1], Gen.Byte).Array[1, 8]).Sample((ending, flips) =>
        {
            var photo = (byte[])photos[ending].Clone();
            foreach (var (where, value) in flips) photo[(int)(where * (photo.Length - 1))] = value;
            var result = SiteCompiler.Compile(Guide("hose." + ending, photo), ThemeFiles.BuiltIn, new MemoryTarget(1), new CompiledSite.Unheard());
            Assert.True(result.IsWritten || result.Findings.Any(f => f.Span.Path == "content/images/hose." + ending && f.Severity == Severity.Error));
        }, iter: 60);
    }

    [Theory]
    [InlineData("jpg")]
    [InlineData("svg")]
    public void A_picture_that_changes_or_vanishes_once_it_was_inspected_does_not_come_onto_the_site(string ending)
    {
        var name = "hose." + ending;
        byte[] Picture(int width) => ending == "svg"
            ? Encoding.UTF8.GetBytes($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"20\"><g/></svg>")
            : Photos.Make(width, 20, SKEncodedImageFormat.Jpeg);

        Assert.Equal(["file-changed"], Compile(new Restless(Guide(name, Picture(40)), "content/images/" + name, Picture(41))));
        Assert.Equal(["file-unreadable"], Compile(new Restless(Guide(name, Picture(40)), "content/images/" + name, null)));
        Assert.Empty(Compile(new Restless(Guide(name, Picture(40)), "content/images/" + name, Picture(40))));

        static IEnumerable<string> Compile(IGuideFiles files) =>
            SiteCompiler.Compile(files, ThemeFiles.BuiltIn, new MemoryTarget(2), new CompiledSite.Unheard()).Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Rule.Id);
    }

    /// <summary>Gives other bytes of one file, or none, from the second reading on.</summary>
    sealed class Restless(IGuideFiles guide, string restless, byte[]? then) : IGuideFiles
    {
        int readings;

        public IReadOnlyList<string> Paths => guide.Paths;

        public bool TryRead(string path, out byte[] bytes, out string why)
        {
            if (path != restless || Interlocked.Increment(ref readings) == 1) return guide.TryRead(path, out bytes, out why);
            (bytes, why) = (then ?? [], then is null ? "it vanished or is locked" : "");
            return then is not null;
        }
    }

    static System.Collections.Immutable.ImmutableArray<Finding> Inspect(byte[] photo) => GuideInspector.Inspect(GuideLoader.Load(Guide("hose.jpg", photo)));

    static CompiledSite WithPhoto(string name, byte[] photo) => CompiledSite.Compile(Guide(name, photo), 2);

    static Overlay Guide(string name, byte[] photo) => new Overlay(Guides.Open(Guides.Small))
        .Put("content/images/" + name, photo)
        .Replace("content/parts/charge-air-hose.md", "It carries the boost.", $"![The hose](../images/{name})");

    static SKEncodedImageFormat FormatOf(string ending) => ending switch
    {
        "jpg" => SKEncodedImageFormat.Jpeg,
        "png" => SKEncodedImageFormat.Png,
        _ => SKEncodedImageFormat.Webp,
    };
}
