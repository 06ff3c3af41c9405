using System.Collections.Frozen;

namespace GuideGen.Site.Rendering;

/// <summary>
/// Which form of a wording stands beside a whole number, by the plural rules of the Unicode CLDR (supplemental/plurals,
/// cardinal). .NET has the numbers and dates of CLDR but not its plural rules, and no package that is served has them,
/// so the rules of the languages most likely to be asked for stand here; a test compares them with a browser's.
/// </summary>
public static class PluralForms
{
    const string One = "one";
    const string Two = "two";
    const string Few = "few";
    const string Many = "many";
    public const string Other = "other";

    static readonly FrozenDictionary<string, Func<long, string>> Rules = Make();

    /// <summary>The names that CLDR gives the forms.</summary>
    public static FrozenSet<string> Names { get; } = [.. new[] { "zero", One, Two, Few, Many, Other }];

    /// <summary>The languages whose rules are known, by their primary subtag; all others are taken to have one form.</summary>
    public static IEnumerable<string> Languages => Rules.Keys.Order(StringComparer.Ordinal);

    /// <summary>The forms that a language has.</summary>
    public static FrozenSet<string> FormsOf(string language) => [.. Enumerable.Range(0, 200).Append(1_000_000).Select(n => Of(language, n))];

    /// <returns>A CLDR name: zero, one, two, few, many or other.</returns>
    public static string Of(string language, long number) =>
        Rules.TryGetValue(language.Split('-')[0], out var rule) ? rule(Math.Abs(number)) : Other;

    static FrozenDictionary<string, Func<long, string>> Make()
    {
        var rules = new Dictionary<string, Func<long, string>>();
        Add("bg da de el en et fi hu nb nl nn no sv sq tr eu ka", n => n == 1 ? One : Other);
        Add("hi fa hy", n => n <= 1 ? One : Other);
        Add("fr pt", n => n <= 1 ? One : n != 0 && n % 1_000_000 == 0 ? Many : Other);
        Add("ca es it", n => n == 1 ? One : n != 0 && n % 1_000_000 == 0 ? Many : Other);
        Add("be ru uk", n => Ends(n, 1) ? One : EndsIn234(n) ? Few : Many);
        Add("bs hr sr", n => Ends(n, 1) ? One : EndsIn234(n) ? Few : Other);
        Add("pl", n => n == 1 ? One : EndsIn234(n) ? Few : Many);
        Add("cs sk", n => n == 1 ? One : n is >= 2 and <= 4 ? Few : Other);
        Add("sl", n => (n % 100) switch { 1 => One, 2 => Two, 3 or 4 => Few, _ => Other });
        Add("lt", n => Ends(n, 1) ? One : n % 10 >= 2 && n % 100 is < 11 or > 19 && n % 10 != 0 ? Few : Other);
        Add("lv", n => n % 10 == 0 || n % 100 is >= 11 and <= 19 ? "zero" : Ends(n, 1) ? One : Other);
        Add("ro", n => n == 1 ? One : n == 0 || n % 100 is >= 1 and <= 19 ? Few : Other);
        Add("he", n => n switch { 1 => One, 2 => Two, _ => Other });
        Add("ga", n => n switch { 1 => One, 2 => Two, >= 3 and <= 6 => Few, >= 7 and <= 10 => Many, _ => Other });
        Add("cy", n => n switch { 0 => "zero", 1 => One, 2 => Two, 3 => Few, 6 => Many, _ => Other });
        Add("ar", n => n switch { 0 => "zero", 1 => One, 2 => Two, _ => (n % 100) switch { >= 3 and <= 10 => Few, >= 11 => Many, _ => Other } });
        Add("id ja ko ms th vi zh", _ => Other);
        return rules.ToFrozenDictionary();

        void Add(string languages, Func<long, string> rule)
        {
            foreach (var language in languages.Split(' ')) rules[language] = rule;
        }
    }

    static bool Ends(long number, int digit) => number % 10 == digit && number % 100 != digit + 10;

    static bool EndsIn234(long number) => number % 10 is >= 2 and <= 4 && number % 100 is < 12 or > 14;
}
