using System.Text;
using CsCheck;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>What an author does to a guide in a sitting, one thing after the other: most of it leaves the guide whole, some of it breaks it for a while.</summary>
sealed class GuideEdits
{
    const string Part = "content/parts/charge-air-hose.md", Fault = "content/faults/charge-air-hose-split.md", Check = "content/checks/pressure-test.md";
    const string Symptom = "content/symptoms/reduced-power.md", Task = "content/tasks/read-codes.md", Case = "content/cases/2019-05-w20d-hose.yml";
    const string Drawing = "content/images/air path #1.svg", Settings = "site-config.yml", Vehicle = "content/vehicle.yml";

    static readonly SortedDictionary<string, byte[]> Originals = Guides.ReadAll(Guides.Open(Guides.Small));

    static readonly (string Name, Action<GuideEdits> Do)[] All =
    [
        ("put everything back", e => e.Begin()),
        ("say more", e => e.Append(Fault, "\nThe slit is hard to see.\n")),
        ("say more of a part", e => e.Append(Part, "\nIt is black.\n")),
        ("say it as another page does", e => e.Put(Task, e.Text(Task) + "\n" + BodyOf(e.Text(Check)))),
        ("name another code in the text", e => e.Append(Symptom, "\nIt may store P0235 as well.\n")),
        ("name a code nobody explains", e => e.Append(Part, "\nSome store P1234.\n")),
        ("add a heading", e => e.Append(Part, "\n## Where to buy it\n\nAnywhere.\n")),
        ("link to a heading", e => e.Append(Fault, "\nSee [where to buy it](../parts/charge-air-hose.md#where-to-buy-it).\n")),
        ("leave a section out", e => e.Replace(Fault, "## Safety", "## Care")),
        ("spell a part otherwise", e => e.Append(Task, "\nPull the charge air-hose off.\n")),
        ("call a part otherwise", e => e.Replace(Part, "name: Charge-air hose\n", "name: Boost hose\n")),
        ("sum a fault up otherwise", e => e.Replace(Fault, "The hose opens under load", "Under load the hose opens")),
        ("name a code in a summary", e => e.Replace(Fault, "summary: ", "summary: After P1234 or P02G9, ")),
        ("name a code in a note", e => e.Replace(Case, "note: ", "note: P1235 came, too. ")),
        ("believe in a fault more", e => e.Replace(Fault, "belief: 6", "belief: 9")),
        ("set a code less often", e => e.Replace(Fault, "P0299: usually", "P0299: sometimes")),
        ("set a code no longer", e => e.Replace(Fault, ", P1A42: 0.2", "")),
        ("notice a symptom less often", e => e.Replace(Fault, "engine-lamp: sometimes", "engine-lamp: rarely")),
        ("let every variant have a fault", e => e.Replace(Fault, "variants: [w20d]\n", "")),
        ("pay more for a part", e => e.Replace(Fault, "price: 38-85", "price: 48-95")),
        ("call an outcome otherwise", e => e.Replace(Check, "  holds: {", "  kept: {")),
        ("let an outcome say nothing", e => e.Replace(Check, ", rules-out: [charge-air-hose-split]", "")),
        ("let a check take longer", e => e.Replace(Check, "minutes: ", "minutes: 1")),
        ("move a page", e => e.Move(Part, "content/parts/boost-hose.md")),
        ("move it back", e => e.Move("content/parts/boost-hose.md", Part)),
        ("sort a page into a folder", e => e.Move(Task, "content/tasks/reading/read-codes.md")),
        ("throw a case away", e => e.files.Remove(Case)),
        ("bring a case back", e => e.files[Case] = Originals[Case]),
        ("date a case into the future", e => e.Replace(Case, "date: 2019-05-14", "date: 2031-05-14")),
        ("leave an address in a case", e => e.Replace(Case, "note: ", "note: Ask me at smith@post.example. ")),
        ("let the vehicle begin later", e => e.Replace(Vehicle, "years: 2012-2022", "years: 2020-2022")),
        ("draw a picture anew", e => e.Replace(Drawing, "<svg ", "<svg  ")),
        ("leave a key half written", e => e.Replace(Fault, "drive: gently", "dri")),
        ("open a fence", e => e.Append(Symptom, "\n```")),
        ("take prices up", e => e.Replace(Vehicle, "workshop-rate: ", "workshop-rate: 1")),
        ("take another title", e => e.Replace(Settings, "title: Small", "title: Little")),
        ("come from an address", e => e.Append(Settings, "base: https://club.example/loris/guide/\n")),
        ("stand in German as well", e => e.Append(Settings, "also-in: [de]\n")),
        ("translate a page", e => e.Put("content/parts/charge-air-hose.de.md", e.Text(Part).Replace("name: Charge-air hose", "name: Ladeluftschlauch", StringComparison.Ordinal))),
        ("allow some HTML", e => e.Append(Settings, "html: [b]\n")),
        ("write some HTML", e => e.Append(Symptom, "\nIt is <b>slow</b>.\n")),
        ("word the look otherwise", e => e.Put("theme/words/en.yml", "nav:\n  home: Beginning\n")),
        ("style the look otherwise", e => e.Put("theme/style/print.css", "p { color: black }\n")),
        ("draw a template otherwise", e => e.Put("theme/templates/not-found.html", "<h1>{{ name }}</h1>\n")),
        ("break a template", e => e.Put("theme/templates/not-found.html", "<h1>{{ name </h1>\n")),
        ("give the look up", e => e.RemoveLook()),
    ];

    /// <summary>Every edit there is, for a sitting of its own.</summary>
    public static IEnumerable<int> Each => Enumerable.Range(0, All.Length);

    /// <summary>A sitting: the guide after each of its edits.</summary>
    public static Gen<int[]> Sitting { get; } = Gen.Int[0, All.Length - 1].Array[1, 10];

    readonly SortedDictionary<string, byte[]> files = new(StringComparer.Ordinal);

    GuideEdits() => Begin();

    /// <summary>The files of the guide before the first edit and after each.</summary>
    public static IEnumerable<(string Done, SortedDictionary<string, byte[]> Files)> After(int[] sitting)
    {
        var edits = new GuideEdits();
        yield return ("begin", new(edits.files, StringComparer.Ordinal));
        foreach (var edit in sitting)
        {
            All[edit].Do(edits);
            yield return (All[edit].Name, new(edits.files, StringComparer.Ordinal));
        }
    }

    /// <summary>Edits by their names.</summary>
    public static int[] Of(params string[] names) => [.. names.Select(n => Array.FindIndex(All, e => e.Name == n))];

    void Begin()
    {
        files.Clear();
        foreach (var (path, content) in Originals) files[path] = content;
    }

    string Text(string path) => files.TryGetValue(path, out var content) ? Encoding.UTF8.GetString(content) : "";

    void Put(string path, string text) => files[path] = Encoding.UTF8.GetBytes(text);

    void Append(string path, string more)
    {
        if (files.ContainsKey(path)) Put(path, Text(path) + more);
    }

    void Replace(string path, string old, string @new)
    {
        if (files.ContainsKey(path)) Put(path, Text(path).Replace(old, @new, StringComparison.Ordinal));
    }

    void Move(string from, string to)
    {
        if (files.Remove(from, out var content)) files[to] = content;
    }

    void RemoveLook()
    {
        foreach (var path in files.Keys.Where(p => p.StartsWith("theme/", StringComparison.Ordinal)).ToList()) files.Remove(path);
    }

    static string BodyOf(string page) => page[(page.IndexOf("\n---\n", StringComparison.Ordinal) + 5)..];
}
