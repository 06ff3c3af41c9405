using System.Text;
using CsCheck;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Keeping;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Tests.Rows;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

public sealed class GuideMemoryTests
{
    const string Part = "content/parts/hose.md", Settings = "site-config.yml";

    static readonly string[] Paths = [.. BaseGuide.Files().Keys.Order(StringComparer.Ordinal)];

    static readonly string[] Pieces = ["x", "\n", "hazards: [airbag]\n", "- ", ": ", "P0299", "é"];
    static readonly string[] SettingsLines = ["also-in: [de]\n", "html: [b]\n", "language: de\n"];
    static readonly string[] NewPlaces = ["content/parts/pipe.md", "content/parts/hose.de.md", "content/tasks/hose.md"];

    /// <summary>What an author does to the files of a guide, one thing after the other.</summary>
    static readonly Gen<Action<Dictionary<string, byte[]>>> Edit =
        from kind in Gen.Int[0, 5]
        from path in Gen.Int[0, Paths.Length - 1].Select(i => Paths[i])
        from at in Gen.Double.Unit
        from which in Gen.Int[0, 20]
        select (Action<Dictionary<string, byte[]>>)(files =>
        {
            switch (kind)
            {
                case 0: files.Remove(path); break;
                case 1: files[path] = BaseGuide.Files()[path]; break;
                case 2: Change(files, Settings, text => text + SettingsLines[which % SettingsLines.Length]); break;
                case 3: Move(files, Part, NewPlaces[which % NewPlaces.Length]); break;
                default: Change(files, path, text => text.Insert((int)(at * text.Length), Pieces[which % Pieces.Length])); break;
            }
        });

    [Fact]
    public void A_guide_read_with_a_memory_is_found_to_be_what_it_is_without() => Edit.Array[1, 8].Sample(
        edits =>
        {
            SittingMemory memory = new();
            var files = BaseGuide.Files();
            foreach (var edit in edits)
            {
                edit(files);
                Assert.Equal(Found(files, null), Found(files, memory));
            }
        },
        iter: Tries.Of(60));

    [Fact]
    public void A_guide_read_with_what_was_written_down_is_found_to_be_what_it_is_without() => Edit.Array[1, 8].Sample(
        edits =>
        {
            var written = Array.Empty<byte>();
            var files = BaseGuide.Files();
            foreach (var edit in edits)
            {
                edit(files);
                KeptMemory memory = new(written, default);
                Assert.Equal(Found(files, null), Found(files, memory));
                written = KeptMemoryTests.Written(memory);
            }
        },
        iter: Tries.Of(60));

    [Fact]
    public void Only_a_file_that_is_another_is_read_anew()
    {
        SittingMemory memory = new();
        var files = BaseGuide.Files();
        var first = GuideLoader.Load(new MemoryFiles(files), memory).Guide;
        Change(files, Part, text => text + "\nIt is black.\n");
        var second = GuideLoader.Load(new MemoryFiles(files), memory).Guide;

        Assert.Same(first.Faults.All[0], second.Faults.All[0]);
        Assert.Same(first.Cases[0], second.Cases[0]);
        Assert.Same(first.Pictures.Values[0], second.Pictures.Values[0]);
        Assert.NotSame(first.Parts.All[0], second.Parts.All[0]);
        Assert.Contains("It is black.", second.Parts.All[0].Origin.Source.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_one_reading_did_not_ask_for_is_forgotten()
    {
        SittingMemory memory = new();
        var files = BaseGuide.Files();
        var first = GuideLoader.Load(new MemoryFiles(files), memory).Guide;
        Move(files, Part, "elsewhere");
        GuideLoader.Load(new MemoryFiles(files), memory);
        Move(files, "elsewhere", Part);

        Assert.NotSame(first.Parts.All[0], GuideLoader.Load(new MemoryFiles(files), memory).Guide.Parts.All[0]);
    }

    /// <summary>Of all editions, the findings and what the files refer to.</summary>
    static string Found(Dictionary<string, byte[]> files, GuideMemory? memory)
    {
        MemoryFiles now = new(files.ToDictionary());
        var first = GuideLoader.Load(now, memory);
        var others = first.Guide.Editions.Skip(1).Where(e => first.Guide.Settings.AlsoIn.Any(l => l.Value == e)).Select(e => GuideLoader.LoadIn(now, e, memory));
        return string.Join('\n', others.Prepend(first).Select(e => RowFile.Print(GuideInspector.Inspect(e, null, memory)) + string.Join('\n', e.Guide.References)));
    }

    static void Change(Dictionary<string, byte[]> files, string path, Func<string, string> change)
    {
        if (files.TryGetValue(path, out var content)) files[path] = Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(content)));
    }

    static void Move(Dictionary<string, byte[]> files, string from, string to)
    {
        if (files.Remove(from, out var content)) files[to] = content;
    }
}
