using System.Globalization;
using System.Text.RegularExpressions;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace GuideGen.Site.Rendering;

/// <summary>All words that the theme and the tool put on pages, in one language.</summary>
public sealed partial class ThemeWords
{
    readonly IReadOnlyDictionary<string, string> words;

    /// <param name="words">By path: names of groups and of the wording, such as <c>drive.gently</c>.</param>
    /// <param name="language">Language tag (BCP 47).</param>
    internal ThemeWords(IReadOnlyDictionary<string, string> words, string language)
    {
        this.words = words;
        Culture = CultureInfo.GetCultureInfo(language);
        var groups = new Dictionary<string, ScriptObject> { [""] = Tree };
        foreach (var (path, text) in words) GroupOf(path)[path[(path.LastIndexOf('.') + 1)..]] = text;

        ScriptObject GroupOf(string path)
        {
            var name = path.LastIndexOf('.') is > 0 and var end ? path[..end] : "";
            if (!groups.TryGetValue(name, out var group)) GroupOf(name)[name[(name.LastIndexOf('.') + 1)..]] = groups[name] = group = new WordGroup();
            return group;
        }
    }

    /// <summary>How the language writes numbers and in which direction it runs.</summary>
    public CultureInfo Culture { get; }

    /// <summary>The form of a wording that stands beside a number; such a wording has at least the form 'other'.</summary>
    public string FormOf(string path, long number) =>
        words.TryGetValue($"{path}.{PluralForms.Of(Culture.Name, number)}", out var form) ? form : this[$"{path}.{PluralForms.Other}"];

    /// <summary>A day in full, with the name of the month, as the language writes it.</summary>
    public string Write(DateOnly day) => day.ToString(WithoutWeekday(Culture.DateTimeFormat.LongDatePattern), Culture);

    static string WithoutWeekday(string pattern) => Weekday().Replace(pattern, "");

    internal ScriptObject Tree { get; } = new WordGroup();

    /// <param name="path">Names of groups and of the wording, such as <c>drive.gently</c>.</param>
    public string this[string path] => words.TryGetValue(path, out var text) ? text : throw new ThemeException($"the theme has no words '{path}'");

    [GeneratedRegex("(?:dddd?[,\\u060C.]?\\s*)|(?:[,\\s]*dddd?)$", RegexOptions.CultureInvariant)]
    private static partial Regex Weekday();

    /// <summary>Words that a template asks for and the theme does not have are a fault of the template, not an empty place on a page.</summary>
    sealed class WordGroup : ScriptObject
    {
        public override bool TryGetValue(TemplateContext? context, Scriban.Parsing.SourceSpan span, string member, out object? value) =>
            base.TryGetValue(context, span, member, out value) ? true : throw new ScriptRuntimeException(span, $"the theme has no words '{member}'");
    }
}
