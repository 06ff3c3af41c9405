using System.Collections.Frozen;
using GuideGen.Guide.Pages;
using Markdig.Syntax;

namespace GuideGen.Guide.Findings;

/// <summary>Reads the explanations, which are Markdown files beside the rule book: a heading for each rule, a paragraph that says why, and blocks 'bad PATH' and 'good PATH'.</summary>
public static class RuleExplanations
{
    const string Prefix = "explained/";

    /// <summary>By the id of the rule. A test holds that no rule is without one.</summary>
    public static FrozenDictionary<string, RuleExplanation> All { get; } = ReadAll();

    static FrozenDictionary<string, RuleExplanation> ReadAll()
    {
        var assembly = typeof(RuleExplanations).Assembly;
        var read =
            from name in assembly.GetManifestResourceNames()
            where name.StartsWith(Prefix, StringComparison.Ordinal)
            from explanation in Read(Text(assembly.GetManifestResourceStream(name)!))
            select explanation;
        return read.ToFrozenDictionary(e => e.Id);
    }

    static List<RuleExplanation> Read(string markdown)
    {
        var read = new List<RuleExplanation>();
        var group = "";
        foreach (var block in PageMarkdown.Parse(markdown))
        {
            if (block is HeadingBlock { Level: 1 } title) group = PageMarkdown.PlainText(title.Inline);
            else if (block is HeadingBlock heading) read.Add(new RuleExplanation(PageMarkdown.PlainText(heading.Inline), group, "", [], []));
            else read[^1] = With(read[^1], block);
        }

        return read;
    }

    static RuleExplanation With(RuleExplanation explanation, Block block) => block switch
    {
        ParagraphBlock paragraph => explanation with { Why = $"{explanation.Why} {PageMarkdown.PlainText(paragraph.Inline)}".TrimStart() },
        FencedCodeBlock { Info: "bad" } fence => explanation with { Bad = explanation.Bad.Add(Example(fence)) },
        FencedCodeBlock { Info: "good" } fence => explanation with { Good = explanation.Good.Add(Example(fence)) },
        _ => throw new InvalidOperationException($"the explanation of {explanation.Id} has a block of another kind"),
    };

    static RuleExample Example(FencedCodeBlock fence)
    {
        var text = fence.Lines.ToString();
        var words = (fence.Arguments ?? "").Split(' ');
        var form = words.ElementAtOrDefault(1) switch
        {
            "whole" => ExampleForm.Whole,
            "removed" => ExampleForm.Removed,
            "told" => ExampleForm.Told,
            _ => text.Split('\n').Any(l => l.StartsWith("+ ", StringComparison.Ordinal)) ? ExampleForm.Change : ExampleForm.Lines,
        };
        return new RuleExample(words[0], form, text);
    }

    static string Text(Stream stream)
    {
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
