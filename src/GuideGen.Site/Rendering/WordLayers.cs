using System.Globalization;
using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Site.Rendering;

/// <summary>Puts the wordings of a language together: English, over it the built-in ones of the language, over them the guide's own.</summary>
sealed partial class WordLayers
{
    const string English = "en";
    const int NamedInMessage = 3;

    readonly ThemeFiles builtIn;
    readonly Dictionary<string, string> english;
    readonly Dictionary<string, string> words;
    readonly HashSet<string> given = new(StringComparer.Ordinal);

    WordLayers(ThemeFiles builtIn)
    {
        this.builtIn = builtIn;
        english = ReadBuiltIn(English).ToDictionary(w => w.Path, w => w.Text.Value);
        words = new(english);
    }

    /// <param name="findings">Told what is wrong with the guide's own words, and what its language lacks.</param>
    public static ThemeWords Of(ThemeFiles builtIn, GuideContent guide, FindingList findings)
    {
        var layers = new WordLayers(builtIn);
        var language = guide.Settings.Language;
        foreach (var tag in Tags(language.Value))
        {
            if (tag != English && builtIn.Has(PathOf(tag))) layers.Lay(layers.ReadBuiltIn(tag));
            if (guide.ThemePieces.TryGetValue(PathOf(tag), out var own)) layers.Lay(layers.Check(Read(own, findings), findings));
        }

        var needed = layers.Needed(language.Value).ToList();
        var missing = needed.Where(k => !layers.given.Contains(k)).Order(StringComparer.Ordinal).ToList();
        if (Tags(language.Value)[0] != English && missing.Count > 0) findings.Add(Missing(language, missing, needed.Count));
        return new ThemeWords(layers.words, language.Value);
    }

    /// <summary>Only the English words of a theme.</summary>
    public static ThemeWords InEnglish(ThemeFiles builtIn) => new(new WordLayers(builtIn).words, English);

    /// <summary>From the widest to the narrowest: de-AT takes its words from de first.</summary>
    static List<string> Tags(string language)
    {
        var parts = language.Split('-');
        return [.. Enumerable.Range(1, parts.Length).Select(n => string.Join('-', parts.Take(n)))];
    }

    static string PathOf(string tag) => $"words/{tag}.yml";

    static Finding Missing(Located<string> language, List<string> missing, int all) => Rules.WordsMissing.At(
        language.Span,
        language.Value,
        missing.Count.ToString(CultureInfo.InvariantCulture),
        all.ToString(CultureInfo.InvariantCulture),
        string.Join(", ", missing.Take(NamedInMessage)));

    /// <summary>All that English has; of wordings that change with a number, the forms of the language.</summary>
    IEnumerable<string> Needed(string language)
    {
        var forms = PluralForms.FormsOf(language);
        return english.Keys.Where(k => FormedBy(k) is null)
            .Concat(english.Keys.Where(k => k.EndsWith("." + PluralForms.Other, StringComparison.Ordinal) && FormedBy(k) is not null).SelectMany(k => forms.Select(f => $"{FormedBy(k)}.{f}")));
    }

    /// <summary>What a form is a form of, or null for what is none.</summary>
    string? FormedBy(string path)
    {
        var dot = path.LastIndexOf('.');
        return dot > 0 && PluralForms.Names.Contains(path[(dot + 1)..]) && english.ContainsKey($"{path[..dot]}.{PluralForms.Other}") ? path[..dot] : null;
    }

    void Lay(IEnumerable<Wording> layer)
    {
        foreach (var (path, text) in layer)
        {
            words[path] = text.Value;
            given.Add(path);
        }
    }

    List<Wording> Check(IEnumerable<Wording> own, FindingList findings)
    {
        var good = new List<Wording>();
        foreach (var wording in own)
        {
            if (Objection(wording) is { } objection) findings.Add(objection);
            else good.Add(wording);
        }

        return good;
    }

    Finding? Objection(Wording own)
    {
        if (!english.TryGetValue(FormedBy(own.Path) is { } formed ? $"{formed}.{PluralForms.Other}" : own.Path, out var meant)) return Rules.WordsUnknown.At(own.Text.Span, own.Path, NearestName.Question(own.Path, english.Keys));
        var places = Places(own.Text.Value);
        return places is { } count && count <= (Places(meant) ?? 0) ? null : Rules.WordsPlaces.At(own.Text.Span, own.Path, places is null ? "{ or }" : $"{{{places - 1}}}", meant);
    }

    /// <summary>How many values a wording asks for; null if its braces are not in order.</summary>
    static int? Places(string wording)
    {
        var rest = wording.Replace("{{", "", StringComparison.Ordinal).Replace("}}", "", StringComparison.Ordinal);
        if (Place().Replace(rest, "").AsSpan().IndexOfAny('{', '}') >= 0) return null;
        return Place().Matches(rest).Select(m => int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture) + 1).DefaultIfEmpty().Max();
    }

    [GeneratedRegex("[{]([0-9])[}]")]
    private static partial Regex Place();

    List<Wording> ReadBuiltIn(string tag)
    {
        var findings = new FindingList();
        var read = Read(new SourceText(PathOf(tag), builtIn.Text(PathOf(tag))), findings);
        return findings.IsEmpty ? read : throw new ThemeException($"{PathOf(tag)} cannot be read: {findings.ToSorted()[0].Message}");
    }

    static List<Wording> Read(SourceText source, FindingList findings)
    {
        var wordings = new List<Wording>();
        if (YamlReader.Read(source, findings) is YamlMap root) Collect(root, "", wordings);
        return wordings;
    }

    static void Collect(YamlMap map, string prefix, List<Wording> into)
    {
        foreach (var (key, value) in map.Entries)
        {
            var path = prefix + key.Value;
            if (value is YamlMap group) Collect(group, path + ".", into);
            else if (value is YamlScalar text) into.Add(new Wording(path, new Located<string>(text.Value, text.Span)));
        }
    }

    /// <param name="Path">Names of groups and of the wording, such as <c>drive.gently</c>.</param>
    sealed record Wording(string Path, Located<string> Text);
}
