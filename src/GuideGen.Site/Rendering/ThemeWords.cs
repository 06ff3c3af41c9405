using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;
using Scriban;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>All words that the theme and the tool put on pages, in one language.</summary>
public sealed class ThemeWords
{
    ThemeWords(ScriptObject tree) => Tree = tree;

    internal ScriptObject Tree { get; }

    /// <param name="path">Names of groups and of the wording, such as <c>drive.gently</c>.</param>
    public string this[string path]
    {
        get
        {
            object? found = Tree;
            foreach (var name in path.Split('.')) found = found is ScriptObject group && group.TryGetValue(name, out var inner) ? inner : null;
            return found as string ?? throw new ThemeException($"the theme has no words '{path}'");
        }
    }

    public static ThemeWords Read(string path, string text)
    {
        var findings = new FindingList();
        var root = YamlReader.Read(new SourceText(path, text), findings) as YamlMap;
        if (root is null || !findings.IsEmpty) throw new ThemeException($"{path} cannot be read");
        return new ThemeWords(Convert(root));
    }

    static WordGroup Convert(YamlMap map)
    {
        var words = new WordGroup();
        foreach (var (key, value) in map.Entries) words[key.Value] = value is YamlMap group ? Convert(group) : ((YamlScalar)value).Value;
        return words;
    }

    /// <summary>Words that a template asks for and the theme does not have are a fault of the theme, not an empty place on a page.</summary>
    sealed class WordGroup : ScriptObject
    {
        public override bool TryGetValue(TemplateContext? context, Scriban.Parsing.SourceSpan span, string member, out object? value) =>
            base.TryGetValue(context, span, member, out value) ? true : throw new ThemeException($"{span.ToStringSimple()}: the theme has no words '{member}'");
    }
}
