using System.Collections.Frozen;
using GuideGen.Site.Publishing;
using Scriban;
using Scriban.Functions;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>The look of a site: templates, words, and the files that are copied as they are.</summary>
/// <remarks>Safe to use from many threads: each page is drawn in a context of its own.</remarks>
public sealed class Theme
{
    readonly FrozenDictionary<string, Template> templates;
    readonly ScriptObject builtins;

    public Theme(ThemeFiles files)
    {
        Files = files;
        Assets = new AssetNames(files);
        Words = ThemeWords.Read("words/en.yml", files.Text("words/en.yml"));
        templates = files.Below("templates").ToFrozenDictionary(
            path => Path.GetFileNameWithoutExtension(path),
            path => Parse(path, files.Text(path)));
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

    /// <exception cref="ThemeException">The template is broken, or asks for something it is not given.</exception>
    public string Draw(string template, ScriptObject model)
    {
        var context = new ThemeContext(builtins, this);
        context.PushGlobal(model);
        return Draw(template, context);
    }

    internal string Draw(string template, TemplateContext context)
    {
        if (!templates.TryGetValue(template, out var parsed)) throw new ThemeException($"the theme has no template '{template}'");
        try
        {
            return parsed.Render(context);
        }
        catch (Scriban.Syntax.ScriptRuntimeException fault)
        {
            throw new ThemeException(fault.Message);
        }
    }

    static Template Parse(string path, string text)
    {
        var template = Template.Parse(text, path);
        return template.HasErrors ? throw new ThemeException(string.Join("; ", template.Messages)) : template;
    }
}

/// <summary>A theme cannot be used as it is; the message says where and why.</summary>
public sealed class ThemeException(string message) : Exception(message);
