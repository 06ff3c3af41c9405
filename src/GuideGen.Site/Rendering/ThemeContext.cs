using System.Diagnostics.CodeAnalysis;
using GuideGen.Guide;
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
    int depth;
    int turns;
    long written;

    // A template that goes through the names of an object asks each item for key and value, by reflection.
    [DynamicDependency(DynamicallyAccessedMemberTypes.PublicProperties, typeof(KeyValuePair<string, object>))]
    public ThemeContext(ScriptObject builtins, Theme theme)
        : base(builtins)
    {
        Theme = theme;
        LoopLimit = GuideLimits.TurnsOfLoop;
        RecursiveLimit = GuideLimits.PieceDepth;
        LimitToString = GuideLimits.CharactersOfPage;
        StrictVariables = true;
    }

    public Theme Theme { get; }

    public void EnterPiece(SourceSpan span)
    {
        if (++depth > GuideLimits.PieceDepth) throw new ScriptRuntimeException(span, $"pieces lie in each other more than {GuideLimits.PieceDepth} deep");
    }

    public void LeavePiece() => depth--;

    /// <summary>Counts the turns of all loops of a page together: loops in loops multiply.</summary>
    protected override bool OnStepLoop(ScriptLoopStatementBase loop) =>
        ++turns > GuideLimits.TurnsOfPage ? throw new ScriptRuntimeException(loop.Span, $"the loops of a page turn more than {GuideLimits.TurnsOfPage} times") : base.OnStepLoop(loop);

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is null) return this;
        var text = textAsObject is HtmlText html ? html.Value : HtmlText.Escape(ObjectToString(textAsObject) ?? "");
        written += text.Length;
        return written > GuideLimits.CharactersOfPage ? throw new ScriptRuntimeException(span, $"the templates of a page write more than {GuideLimits.CharactersOfPage} characters, counted anew in each that they lie in") : Write(text);
    }
}
