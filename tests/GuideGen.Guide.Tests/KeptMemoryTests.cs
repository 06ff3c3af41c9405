using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Keeping;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Tests;

/// <summary>What is written down is read again as it was, by the tool that wrote it.</summary>
public sealed class KeptMemoryTests
{
    static readonly Digest Tool = Digest.Of([1]);
    static readonly SourceText Source = new("x.md", "It splits.");
    static readonly KeptKey Key = new(KeptKind.Findings, default, Digest.Of([2]));
    static readonly FindingsForm Form = new(Source);
    static readonly ImmutableArray<Finding> Findings = [Rules.CodeLoose.At(Source.Span(3, 6), "p0299", "P0299")];

    internal static byte[] Written(KeptMemory memory)
    {
        using var file = new MemoryStream();
        memory.WriteTo(file);
        return file.ToArray();
    }

    [Fact]
    public void What_a_run_kept_is_found_by_the_next_and_what_it_did_not_ask_for_is_not()
    {
        var (first, second) = (new KeptMemory([], Tool), Digest.Of([3]));
        first.Keep(Key, Form, Findings);
        first.Keep(Key with { Content = second }, Form, []);

        var next = new KeptMemory(Written(first), Tool);
        Assert.True(next.TryFind(Key, Form, out var found));
        Assert.Equal<Finding>(Findings, found);
        Assert.False(next.TryFind(Key with { Basis = second }, Form, out _));
        Assert.False(next.TryFind(Key with { Kind = KeptKind.Body }, Form, out _));

        var last = new KeptMemory(Written(next), Tool);
        Assert.True(last.TryFind(Key, Form, out _));
        Assert.False(last.TryFind(Key with { Content = second }, Form, out _));
    }

    static readonly Func<byte[], byte[]>[] Damages =
    [
        _ => [],
        b => b[..40],
        b => b[..^1],
        b => [.. b, 0],
        b => [.. b[..^1], (byte)(b[^1] ^ 1)],
        b => [(byte)(b[0] ^ 1), .. b[1..]],
        b => [.. b[..40], (byte)(b[40] ^ 1), .. b[41..]],
    ];

    [Fact]
    public void A_damaged_file_holds_nothing()
    {
        var memory = new KeptMemory([], Tool);
        memory.Keep(Key, Form, Findings);

        Assert.All(Damages, damage => Assert.False(new KeptMemory(damage(Written(memory)), Tool).TryFind(Key, Form, out _)));
    }

    [Fact]
    public void The_file_of_another_tool_holds_nothing()
    {
        var memory = new KeptMemory([], Tool);
        memory.Keep(Key, Form, Findings);

        Assert.False(new KeptMemory(Written(memory), Digest.Of([4])).TryFind(Key, Form, out _));
    }

    [Theory]
    [InlineData("a: 1\nb: [x, 'y', \"z\\u00e9\"]\nc: { d: |\n  two\n  lines\n }\n")]
    [InlineData("- - - deep\n- ''\n- ~\n")]
    [InlineData("plain")]
    public void Nodes_are_read_as_they_were(string yaml)
    {
        var source = new SourceText("x.yml", yaml);
        var root = YamlReader.Read(source, new FindingList());

        Assert.Equal(Drawn(root), Drawn(root is null ? null : Again(new YamlForm(source), root)));
    }

    [Theory]
    [InlineData("a: 1\n")]
    [InlineData("## One\n\nText with P0299, `code` and [a *link*](x.md#y \"t\").\n\n### Two & more\n\n![a picture](p.svg)\n\n> ## In a quote\n\n<b>bold</b>\n\n## Three\n")]
    public void A_body_is_read_as_it_was(string markdown)
    {
        var source = new SourceText("x.md", markdown);
        var body = PageBodyReader.Read(source, 0, new FindingList(), allowsHtml: true)!;

        var again = Again(new BodyForm(source), body);

        Assert.Equal(body.Start, again.Start);
        Assert.Equal(body.Headings, again.Headings);
        Assert.Equal(body.Sections, again.Sections);
        Assert.Equal(body.Links, again.Links);
        Assert.Equal(body.Runs, again.Runs);
        Assert.Equal(body.Html, again.Html);
        Assert.Equal(body.Codes, again.Codes);
    }

    [Fact]
    public void Findings_about_one_page_are_read_as_they_were_and_others_are_not_kept()
    {
        var (source, other) = (new SourceText("x.md", "It splits."), new SourceText("y.md", "It splits."));
        var finding = Rules.CodeLoose.At(source.Span(3, 6), "p0299", "P0299").Concerning("P0299").Weighing(Severity.Error);
        var form = new FindingsForm(source);

        Assert.Equal([finding], Again(form, [finding]));
        Assert.True(form.Fits([finding]));
        Assert.False(form.Fits([finding, finding with { Span = other.Span(3, 6) }]));
        Assert.False(form.Fits([finding.Resting("y.md")]));
        Assert.False(form.Fits([finding with { AlsoOn = ("y.md", "") }]));
    }

    [Theory, InlineData(0), InlineData(127), InlineData(128), InlineData(16_384), InlineData(int.MaxValue), InlineData(-1)]
    public void A_number_is_read_as_it_was(int number)
    {
        var writer = new KeptWriter();
        writer.Number(number);
        var reader = new KeptReader(writer.Written);

        Assert.Equal((number, 0), (reader.Number(), reader.Left));
    }

    static T Again<T>(IKeptForm<T> form, T value)
    {
        var writer = new KeptWriter();
        form.Write(writer, value);
        var reader = new KeptReader(writer.Written);
        var read = form.Read(ref reader);
        Assert.Equal(0, reader.Left);
        return read;
    }

    static string Drawn(YamlNode? node) => node switch
    {
        YamlScalar scalar => $"{scalar.Value}|{scalar.IsQuoted}|{Place(scalar)}",
        YamlList list => $"[{string.Join(' ', list.Items.Select(Drawn))}]{Place(list)}",
        YamlMap map => $"{{{string.Join(' ', map.Entries.Select(e => $"{Drawn(e.Key)}={Drawn(e.Value)}"))}}}{Place(map)}",
        _ => "nothing",
    };

    static string Place(YamlNode node) => $"{node.Span.Start}+{node.Span.Length}";
}
