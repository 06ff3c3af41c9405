using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace GuideGen.Site.Rendering;

/// <summary>
/// Where a template runs: without files, clock or environment, with limits, and with every printed value escaped
/// unless it is <see cref="HtmlText"/>. A forgotten escape therefore cannot let a page's text become markup.
/// </summary>
/// <remarks>The limits are a hundred times what the largest page of a large guide takes, so that only a slip or ill will meets them.</remarks>
sealed class ThemeContext : TemplateContext
{
    const int DeepestPiece = 40;
    const int MostTurns = 2_000_000;
    const int MostCharacters = 16 * 1024 * 1024;

    int depth;
    int turns;
    long written;

    public ThemeContext(ScriptObject builtins, Theme theme)
        : base(builtins)
    {
        Theme = theme;
        LoopLimit = 200_000;
        RecursiveLimit = DeepestPiece;
        LimitToString = MostCharacters;
        StrictVariables = true;
    }

    public Theme Theme { get; }

    public void EnterPiece(SourceSpan span)
    {
        if (++depth > DeepestPiece) throw new ScriptRuntimeException(span, $"pieces lie in each other more than {DeepestPiece} deep");
    }

    public void LeavePiece() => depth--;

    /// <summary>Counts the turns of all loops of a page together: loops in loops multiply.</summary>
    protected override bool OnStepLoop(ScriptLoopStatementBase loop) =>
        ++turns > MostTurns ? throw new ScriptRuntimeException(loop.Span, $"the loops of a page turn more than {MostTurns} times") : base.OnStepLoop(loop);

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is null) return this;
        var text = textAsObject is HtmlText html ? html.Value : HtmlText.Escape(ObjectToString(textAsObject) ?? "");
        written += text.Length;
        return written > MostCharacters ? throw new ScriptRuntimeException(span, $"a page has more than {MostCharacters} characters") : Write(text);
    }
}
