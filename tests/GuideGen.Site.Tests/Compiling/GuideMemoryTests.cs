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
        SittingMemory memory = new();
        var (first, second) = GuideEdits.After(GuideEdits.Of("say more")).Select(e => GuideEditions.Read(new MemoryFiles(e.Files), ThemeFiles.BuiltIn, null, memory)).ToList() switch
        {
            [var one, var two] => (one, two),
            _ => throw new InvalidOperationException(),
        };

        Assert.Equal(first.Guide.Frame, second.Guide.Frame);
        Assert.Same(first.First.Reading.Weights, second.First.Reading.Weights);
        Assert.Same(first.First.Look, second.First.Look);
        Assert.NotSame(first.Guide.Faults.All[1], second.Guide.Faults.All[1]);
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
