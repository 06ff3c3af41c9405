using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Keeping;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Tests;

public sealed class BlanksTests
{
    static readonly string Help = SectionPlan.Of(ContentKind.Task)[1].Help;

    /// <summary>A path, a text, and where its blanks stand.</summary>
    public static TheoryData<string, string, int[]> Texts => new()
    {
        { "a.yml", "____", [0] },
        { "a.yml", "name: ____", [6] },
        { "a.yml", "name: ___", [] },
        { "a.yml", "# name: ____\nsummary: ______", [22] },
        { "a.yml", "  # name: ____\n", [] },
        { "a.yml", "a: 1 # ____", [7] },
        { "a.md", "---\n# name: ____\nsummary: ____\n---\n# ____", [26, 37] },
        { "a.md", "# ____", [2] },
        { "a.md", $"---\nname: a\n---\n## Do it\n{Help}", [25] },
        { "a.md", $"---\nname: a\n---\n## Do it\n____ {Help}", [25] },
        { "a.md", Help, [0] },
    };

    [Theory, MemberData(nameof(Texts))]
    public void A_blank_is_a_marker_that_an_author_has_taken_or_help_that_is_left(string path, string text, int[] places)
    {
        SourceText source = new(path, text);

        Assert.Equal(places, Blanks.In(source).Select(f => f.Span.Start));
        Assert.Equal(places.Length, Blanks.CountIn(source));
    }

    // A page that cannot be used, one that could be kept, a case, and a file that is used as it stands.
    [Theory]
    [InlineData("content/faults/a.md", "no front matter ____")]
    [InlineData("content/faults/a.md", "---\nname: A\n---\n\n____\n")]
    [InlineData("content/cases/a.yml", "note: ____\n")]
    [InlineData("theme/templates/fault.html", "<p>____</p>")]
    public void A_blank_is_told_wherever_it_stands_and_by_the_next_run_as_well(string path, string text)
    {
        MemoryFiles files = new(new Dictionary<string, byte[]> { [path] = Encoding.UTF8.GetBytes(text) });
        KeptMemory first = new([], Digest.Of([1]));

        Assert.Contains(GuideLoader.Load(files, first).Findings, f => f.Rule == Rules.BlankLeft && f.Span.Path == path);
        KeptMemory next = new(KeptMemoryTests.Written(first), Digest.Of([1]));
        Assert.Contains(GuideLoader.Load(files, next).Findings, f => f.Rule == Rules.BlankLeft && f.Span.Path == path);
    }

    // The blank stands at 10 to 14. What touches it is there because of it; nothing at all is held to be as wide as a character.
    [Theory]
    [InlineData(10, 4, false)]
    [InlineData(12, 1, false)]
    [InlineData(13, 9, false)]
    [InlineData(10, 0, false)]
    [InlineData(8, 5, false)]
    [InlineData(14, 3, true)]
    [InlineData(8, 2, true)]
    [InlineData(9, 0, true)]
    [InlineData(0, 3, true)]
    public void What_is_found_at_a_blank_is_left_out(int start, int length, bool isKept)
    {
        SourceText source = new("a.yml", "summary: x____ and further words");
        Finding blank = Rules.BlankLeft.At(source.Span(10, 4)), other = Rules.FileEmpty.At(source.Span(start, length));

        Assert.Equal(isKept, Blanks.Apply([blank, other]).Contains(other));
        Assert.Contains(blank, Blanks.Apply([blank, other]));
    }

    [Fact]
    public void A_blank_of_another_file_hides_nothing()
    {
        SourceText source = new("a.yml", "summary: x____ and further words"), elsewhere = new("b.yml", source.Text);
        Finding other = Rules.FileEmpty.At(source.Span(10, 4));

        Assert.Contains(other, Blanks.Apply([Rules.BlankLeft.At(elsewhere.Span(10, 4)), other]));
        Assert.Contains(other, Blanks.Apply([other]));
    }
}
