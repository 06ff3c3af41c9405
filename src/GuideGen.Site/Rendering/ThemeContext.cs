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

    /// <summary>Begins a page: nothing is left of the one before.</summary>
    public void Begin(ScriptObject model)
    {
        (depth, turns, written) = (0, 0, 0);
        PushGlobal(model);
    }

    public void End() => PopGlobal();

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
        switch (textAsObject)
        {
            case null:
                return this;
            case DrawnHtml drawn:
                Count(span, drawn.Text.Span.Length);
                // A template may also catch what it writes, in an output of its own.
                if (Output is not TextBuffer page) return Write(drawn.ToString());
                page.Append(drawn.Text.Span);
                return this;
            default:
                var text = textAsObject is HtmlText html ? html.Value : HtmlText.Escape(ObjectToString(textAsObject) ?? "");
                Count(span, text.Length);
                return Write(text);
        }
    }

    void Count(SourceSpan span, int length)
    {
        written += length;
        if (written > GuideLimits.CharactersOfPage) throw new ScriptRuntimeException(span, $"the templates of a page write more than {GuideLimits.CharactersOfPage} characters, counted anew in each that they lie in");
    }
}
