using System.Runtime.CompilerServices;
using CsCheck;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Rendering;
using GuideGen.Site.Writing;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>A guide that is drawn again and again while it is written looks as if it were drawn for the first time.</summary>
public sealed class GuideMemoryTests
{
    [Fact]
    public void After_each_edit_everything_is_as_if_nothing_were_remembered() => GuideEdits.Sitting.Sample(
        sitting =>
        {
            SittingMemory memory = new();
            foreach (var (done, files) in GuideEdits.After(sitting)) Assert.Equal([done, .. Made(files, null).Split('\n')], [done, .. Made(files, memory).Split('\n')]);
        },
        iter: Tries.Of(20),
        print: Names);

    [Fact]
    public void After_any_one_edit_everything_is_as_if_nothing_were_remembered() => Assert.All(GuideEdits.Each, edit =>
    {
        SittingMemory memory = new();
        foreach (var (_, files) in GuideEdits.After([edit])) Assert.Equal(Made(files, null).Split('\n'), Made(files, memory).Split('\n'));
    });

    [Fact]
    public void A_page_that_is_translated_while_its_language_is_there_is_read_in_it()
    {
        SittingMemory memory = new();

        var names = GuideEdits.After(GuideEdits.Of("stand in German as well", "translate a page"))
            .Select(e => GuideEditions.Read(new MemoryFiles(e.Files), ThemeFiles.BuiltIn, null, memory).All[^1].Reading.Guide.Parts.All.Select(p => p.Name.Value).First());

        Assert.Equal(["Charge-air hose", "Charge-air hose", "Ladeluftschlauch"], names);
    }

    [Fact]
    public void A_page_with_more_to_say_lets_everything_else_be_as_it_was()
    {
        var (first, second) = BeforeAndAfter("say more");

        Assert.Equal(first.Guide.Frame, second.Guide.Frame);
        Assert.Same(first.First.Reading.Weights, second.First.Reading.Weights);
        Assert.Same(first.First.Look, second.First.Look);
        Assert.NotSame(first.Guide.Faults.All[1], second.Guide.Faults.All[1]);
    }

    [Theory]
    [InlineData("sum a fault up otherwise")]
    [InlineData("pay more for a part")]
    [InlineData("call a part otherwise")]
    public void What_is_no_evidence_lets_the_weights_be_as_they_were(string edit)
    {
        var (first, second) = BeforeAndAfter(edit);

        Assert.NotEqual(first.Guide.Frame, second.Guide.Frame);
        Assert.Same(first.First.Reading.Weights, second.First.Reading.Weights);
    }

    [Theory]
    [InlineData("believe in a fault more")]
    [InlineData("set a code less often")]
    [InlineData("set a code no longer")]
    [InlineData("notice a symptom less often")]
    [InlineData("let every variant have a fault")]
    [InlineData("let an outcome say nothing")]
    [InlineData("let a check take longer")]
    [InlineData("throw a case away")]
    [InlineData("name another code in the text")]
    [InlineData("take prices up")]
    public void What_is_evidence_is_weighed_anew(string edit)
    {
        var (first, second) = BeforeAndAfter(edit);

        Assert.NotSame(first.First.Reading.Weights, second.First.Reading.Weights);
    }

    [Fact]
    public void A_look_that_is_no_longer_used_is_let_go()
    {
        var look = Drawn();

        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();

        Assert.False(look.TryGetTarget(out _));

        [MethodImpl(MethodImplOptions.NoInlining)]
        static WeakReference<Theme> Drawn()
        {
            var files = new MemoryFiles(GuideEdits.After([]).Single().Files);
            var guide = GuideEditions.Read(files, ThemeFiles.BuiltIn);
            new MemoryTarget(2).Write(guide.Draw(files).Pages());
            return new(guide.First.Look.Theme);
        }
    }

    [Theory]
    [InlineData("name another code in the text")]
    [InlineData("add a heading")]
    [InlineData("sum a fault up otherwise")]
    [InlineData("draw a picture anew")]
    [InlineData("take another title")]
    [InlineData("word the look otherwise")]
    [InlineData("throw a case away")]
    [InlineData("sort a page into a folder")]
    public void What_other_pages_can_know_makes_another_frame(string edit)
    {
        var frames = GuideEdits.After(GuideEdits.Of(edit)).Select(e => GuideLoader.Load(new MemoryFiles(e.Files)).Guide.Frame);

        Assert.Distinct(frames);
    }

    /// <summary>The guide as it was and as it is after an edit, read with one memory.</summary>
    static (GuideEditions First, GuideEditions Second) BeforeAndAfter(string edit)
    {
        SittingMemory memory = new();
        var read = GuideEdits.After(GuideEdits.Of(edit)).Select(e => GuideEditions.Read(new MemoryFiles(e.Files), ThemeFiles.BuiltIn, null, memory)).ToList();
        Assert.All(read, r => Assert.False(r.HasErrors));
        Assert.Equal(2, read.Count);
        return (read[0], read[1]);
    }

    static string Names(int[] sitting) => string.Join("; ", GuideEdits.After(sitting).Select(e => e.Done));

    /// <summary>What is found, and a line for each file of the site, if there is one.</summary>
    static string Made(SortedDictionary<string, byte[]> files, GuideMemory? memory)
    {
        var guide = new MemoryFiles(files);
        var read = GuideEditions.Read(guide, ThemeFiles.BuiltIn, new DateOnly(2026, 6, 1), memory);
        var found = string.Join('\n', read.Findings.Select(f => FindingFormatter.ToLine(f) + "\n" + f.Hint));
        if (read.HasErrors) return found;
        var target = new MemoryTarget(2);
        var site = read.Draw(guide, memory);
        target.Write(site.All(), site.Closing());
        return found + string.Concat(target.Files.Select(f => $"\n{f.Key} {Convert.ToHexStringLower(SiteManifest.HashOf(f.Value))}"));
    }
}
