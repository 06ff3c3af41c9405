using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>A page says when somebody last read it through, who and on what, and what it rests on, as far as it knows.</summary>
public sealed class ReviewTests
{
    [Theory]
    [InlineData("reviewed: 2026-05-02\n", "Last read through 2 May 2026.")]
    [InlineData("reviewed: 2026-05-02\nreviewed-by: the van evening\n", "Last read through 2 May 2026, by the van evening.")]
    [InlineData("reviewed: 2026-05-02\nreviewed-by: the van evening\nreviewed-on: [w20d]\nsources: [Common practice, Bench notes]\n", "Last read through 2 May 2026, by the van evening, on 2.0 turbo-diesel. Rests on: Common practice; Bench notes.")]
    [InlineData("sources: [Common practice]\n", "Rests on: Common practice.")]
    [InlineData("", "")]
    public void The_foot_of_a_page_says_what_the_front_matter_says(string keys, string said)
    {
        var guide = new Overlay(Guides.Open(Guides.Small)).Put("content/tasks/read-codes.md", $"---\nname: Read the codes\nsummary: Before anything is cleared.\nminutes: 5\n{keys}---\n## Safety\n\nStand still.\n\n## Do it\n\n1. Read them.\n");

        var foot = CompiledSite.Compile(guide, 2).Pages["tasks/read-codes.html"].Document.QuerySelector(".provenance");

        Assert.Equal(said, string.Join(' ', (foot?.TextContent ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
    }
}
