using System.Collections.Concurrent;
using System.Collections.Frozen;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using GuideGen.Site.Publishing;
using Scriban;
using Scriban.Functions;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace GuideGen.Site.Rendering;

/// <summary>The look of a site: templates, words, and the files that are copied as they are.</summary>
/// <remarks>Safe to use from many threads: each page is drawn in a context of its own.</remarks>
public sealed class Theme
{
    // A compile of a few changed pages asks for a few of them.
    readonly FrozenDictionary<string, Lazy<Template>> templates;
    readonly ScriptObject builtins;

    // A context is large and learns how to read what it is given, so the next page gets it again. Not from a bag: its lists of each
    // thread would hold the contexts, and they the theme, for ever.
    readonly ConcurrentStack<ThemeContext> contexts = [];

    internal Theme(ThemeFiles files, ThemeWords words)
    {
        Files = files;
        Words = words;
        Assets = new AssetNames(files);
        templates = files.Below("templates").ToFrozenDictionary(
            path => Path.GetFileNameWithoutExtension(path),
            path => new Lazy<Template>(() => Parse(path, files.Text(path))));
        builtins = new ScriptObject
        {
            ["string"] = new StringFunctions(),
            ["array"] = new ArrayFunctions(),
            ["words"] = Words.Tree,
            ["piece"] = new PieceFunction(),
            ["fill"] = new FillFunction(),
        };
    }

    public ThemeFiles Files { get; }

    internal AssetNames Assets { get; }

    public ThemeWords Words { get; }

    /// <summary>A whole page: its own template in the frame that all pages have.</summary>
    /// <param name="model">What the templates see; the frame sees the drawn page as <c>content</c>.</param>
    /// <param name="page">Where it is drawn.</param>
    /// <exception cref="ThemeException">A template is missing or broken, or asks for something it is not given.</exception>
    internal void DrawPage(string template, ScriptObject model, TextBuffer page)
    {
        var context = contexts.TryPop(out var used) ? used : new ThemeContext(builtins, this);
        using var content = new TextBuffer();
        context.Begin(model);
        try
        {
            Draw(template, context, content);
            model["content"] = new DrawnHtml(content);
            Draw("frame", context, page);
        }
        catch (ScriptRuntimeException fault)
        {
            throw new ThemeException(fault.Message, FindingOf(fault.Span, fault.OriginalMessage));
        }

        context.End();
        contexts.Push(context);
    }

    internal bool Has(string template) => templates.ContainsKey(template);

    internal void Draw(string template, TemplateContext context, TextBuffer output)
    {
        if (!Has(template)) throw new ThemeException($"the theme has no template '{template}'");
        context.PushOutput(output);
        try
        {
            templates[template].Value.Render(context);
        }
        finally
        {
            context.PopOutput();
        }
    }

    /// <summary>Why a guide's own template cannot be used, or null.</summary>
    internal static Finding? Objection(SourceText text)
    {
        var parsed = Template.Parse(text.Text, text.Path);
        return parsed.Messages.FirstOrDefault(m => m.Type == ParserMessageType.Error) is { } fault ? Finding(text, fault.Span, fault.Message) : null;
    }

    /// <summary>A fault in a template of the guide's own is its author's to mend; one in a built-in template is ours.</summary>
    Finding? FindingOf(Scriban.Parsing.SourceSpan span, string message) =>
        span.FileName is { } path && Files.Pieces.TryGetValue(path, out var text) ? Finding(text, span, message) : null;

    static Finding Finding(SourceText text, Scriban.Parsing.SourceSpan span, string message)
    {
        var start = Math.Clamp(span.Start.Offset, 0, text.Text.Length);
        return Rules.ThemeTemplate.At(text.Span(start, Math.Clamp(span.Length, 0, text.Text.Length - start)), message.TrimEnd('.'));
    }

    static Template Parse(string path, string text)
    {
        var template = Template.Parse(text, path);
        return template.HasErrors ? throw new ThemeException(string.Join("; ", template.Messages)) : template;
    }
}

/// <summary>A theme cannot be used as it is; the message says where and why.</summary>
/// <param name="finding">What the author of the guide has to mend; null where the fault is in the built-in theme.</param>
public sealed class ThemeException(string message, Finding? finding = null) : Exception(message)
{
    public Finding? Finding { get; } = finding;
}
