using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>
/// Where a template runs: without files, clock or environment, with limits, and with every printed value escaped
/// unless it is <see cref="HtmlText"/>. A forgotten escape therefore cannot let a page's text become markup.
/// </summary>
sealed class ThemeContext : TemplateContext
{
    public ThemeContext(ScriptObject builtins, Theme theme)
        : base(builtins)
    {
        Theme = theme;
        LoopLimit = 200_000;
        RecursiveLimit = 40;
        LimitToString = 8 * 1024 * 1024;
        StrictVariables = true;
    }

    public Theme Theme { get; }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is null) return this;
        var text = textAsObject is HtmlText html ? html.Value : HtmlText.Escape(ObjectToString(textAsObject) ?? "");
        return Write(text);
    }
}
