using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace GuideGen.Site.Rendering;

/// <summary><c>piece 'name' value</c> draws another template, which sees the value as <c>it</c>.</summary>
sealed class PieceFunction : ThemeFunction
{
    public override object Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
    {
        if (arguments is not [string name, ..]) throw new ScriptRuntimeException(callerContext?.Span ?? default, "'piece' needs the name of a template");
        var page = (ThemeContext)context;
        if (!page.Theme.Has(name)) throw new ScriptRuntimeException(callerContext?.Span ?? default, $"the theme has no template '{name}'");
        page.EnterPiece(callerContext?.Span ?? default);
        var scope = new ScriptObject { ["it"] = arguments.Count > 1 ? arguments[1] : null };
        context.PushGlobal(scope);
        try
        {
            using var drawn = new TextBuffer();
            page.Theme.Draw(name, context, drawn);
            return new HtmlText(drawn.Span.ToString());
        }
        finally
        {
            context.PopGlobal();
            page.LeavePiece();
        }
    }
}

/// <summary><c>words.x | fill a b</c> puts values into the numbered places of a wording; one that has forms is taken in that of the first value.</summary>
sealed class FillFunction : ThemeFunction
{
    public override object Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
    {
        var words = ((ThemeContext)context).Theme.Words;
        var wording = arguments switch
        {
            [string text, ..] => text,
            [ScriptObject forms, int number, ..] when forms.Contains(PluralForms.Other) => Form(forms, PluralForms.Of(words.Culture.Name, number)),
            _ => throw new ScriptRuntimeException(callerContext?.Span ?? default, "'fill' needs a wording"),
        };
        return string.Format(words.Culture, wording, [.. arguments.Skip(1)]);
    }

    static string Form(ScriptObject forms, string name) => (string)forms[forms.Contains(name) ? name : PluralForms.Other]!;
}

abstract class ThemeFunction : IScriptCustomFunction
{
    public int RequiredParameterCount => 1;

    public int ParameterCount => 1;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.Direct;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(object), "value");

    public abstract object Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement);

    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        ValueTask.FromResult<object?>(Invoke(context, callerContext, arguments, blockStatement));
}
