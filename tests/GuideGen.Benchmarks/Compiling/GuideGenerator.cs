using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GuideGen.Codes;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>
/// A guide of any size, in blocks of 25 pages whose links stay inside the block: 8 faults, 7 checks, 5 parts, 2 symptoms, 2 trees
/// and a task, and 20 solved cases, which is about the proportion of the guide in this repository. A page has about 700 words.
/// The same size gives the same bytes.
/// </summary>
sealed class GuideGenerator
{
    public const int PagesOfBlock = 25;
    const int Faults = 8, Checks = 7, Parts = 5, Cases = 20, Systems = 20, Seed = 20;

    static readonly ImmutableArray<string> Codes = [.. CodeCatalogue.Standard.Select(e => e.Code.ToString()).Where(c => c[1] != '3' || c[0] is 'P' or 'U')];
    static readonly string[] Likelihoods = ["always", "usually", "sometimes", "rarely"];

    readonly RandomText text = new(Seed);
    readonly SortedDictionary<string, byte[]> files = new(StringComparer.Ordinal);

    GuideGenerator()
    {
    }

    /// <returns>The files of the guide by path; <paramref name="pages"/> is rounded up to whole blocks.</returns>
    public static SortedDictionary<string, byte[]> Guide(int pages)
    {
        var generator = new GuideGenerator();
        generator.Frame();
        for (var block = 0; block * PagesOfBlock < pages; block++) generator.Block(block);
        return generator.files;
    }

    void Frame()
    {
        var systems = string.Join('\n', Enumerable.Range(0, Systems).Select(i => $"  {System(i)}: {Name()}"));
        Put("site-config.yml", "title: Large guide\nlanguage: en-GB\nsummary: As many pages as are asked for.\n");
        Put("content/vehicle.yml", $$"""
            name: Wexcombe Loris
            summary: A compact van.
            years: 2012-2022
            currency: EUR
            workshop-rate: 95
            distance-unit: km
            variants:
              w20d: { name: "2.0 turbo-diesel", engine: "Four cylinders", fuel: diesel, years: 2012-2022 }
              w16p: { name: "1.6 turbo-petrol", engine: "Four cylinders", fuel: petrol, years: 2014-2022 }
            systems:
            {{systems}}
            setups:
              tray-off: { name: "Tray off", minutes: 15 }

            """);
    }

    void Block(int block)
    {
        for (var i = 0; i < Faults; i++) Put($"content/faults/{Slug("fault", block, i)}.md", Fault(block, i));
        for (var i = 0; i < Checks; i++) Put($"content/checks/{Slug("check", block, i)}.md", Check(block, i));
        for (var i = 0; i < Parts; i++) Put($"content/parts/{Slug("part", block, i)}.md", Part(block, i));
        for (var i = 0; i < 2; i++) Put($"content/symptoms/{Slug("symptom", block, i)}.md", Symptom(block, i));
        for (var i = 0; i < 2; i++) Put($"content/trees/{Slug("tree", block, i)}.yml", Tree(block, i));
        Put($"content/tasks/{Slug("task", block, 0)}.md", Task(block));
        for (var i = 0; i < Cases; i++) Put($"content/cases/{Slug("case", block, i)}.yml", Case(block, i));
    }

    string Fault(int block, int i) => $$"""
        ---
        name: {{Name()}}
        summary: {{text.Sentences(20)}}
        system: {{System(block)}}
        codes: { {{Code(block, i, 0)}}: usually, {{Code(block, i, 1)}}: sometimes, {{Code(block, i, 2)}}: rarely }
        symptoms: { {{Slug("symptom", block, i % 2)}}: {{Any(Likelihoods)}}, {{Slug("symptom", block, (i + 1) % 2)}}: rarely }
        parts: [{{Slug("part", block, i % Parts)}}]
        checks: [{{Slug("check", block, i % Checks)}}, {{Slug("check", block, (i + 1) % Checks)}}]
        belief: {{1 + (i % 6)}}
        drive: gently
        repair:
          own-hours: 1.5
          workshop-hours: 1.2
          skill: 2
          tools: [socket set, screwdriver]
          parts:
            - { name: {{Name()}}, part: {{Slug("part", block, i % Parts)}}, price: 38-85 }
          consumables:
            - { name: {{Name()}}, price: 3 }
        reviewed: 2026-05-02
        sources: ["Common practice, no source"]
        ---
        ## Safety

        - {{text.Sentences(24)}}
        - {{text.Sentences(24)}}

        ## What happens

        {{text.Sentences(120)}} The [part](../parts/{{Slug("part", block, i % Parts)}}.md) shows {{Code(block, i, 0)}}.

        {{text.Sentences(100)}}

        ## Confirm it

        1. {{text.Sentences(36)}}
        2. Do [this check](../checks/{{Slug("check", block, i % Checks)}}.md). {{text.Sentences(36)}}

        ## Put it right

        {{Steps(5, 36)}}

        ## Prove it

        {{text.Sentences(60)}} See [the task](../tasks/{{Slug("task", block, 0)}}.md).

        """;

    string Check(int block, int i) => $$"""
        ---
        name: {{Name()}}
        summary: {{text.Sentences(15)}}
        minutes: {{5 + (i * 4)}}
        setup: [{{(i % 3 == 0 ? "tray-off" : "")}}]
        tools: [multimeter, torch]
        parts: [{{Slug("part", block, i % Parts)}}]
        outcomes:
          bad: { name: "{{Name()}}", points-to: [{{Slug("fault", block, i)}}] }
          good: { name: "{{Name()}}", rules-out: [{{Slug("fault", block, i)}}] }
        readings:
          - { name: {{Name()}}, quantity: voltage, unit: V, low: 4.8, high: 5.2, when: "{{text.Words(4)}}" }
        reviewed: 2026-04-18
        sources: ["Common practice, no source"]
        ---
        ## Safety

        {{text.Sentences(36)}}

        ## Do it

        {{Steps(8, 60)}}

        ## What it tells you

        {{text.Sentences(100)}} See [the fault](../faults/{{Slug("fault", block, i)}}.md).

        """;

    string Part(int block, int i) => $$"""
        ---
        name: {{Name()}}
        summary: {{text.Sentences(15)}}
        system: {{System(block)}}
        where: {{text.Sentences(8)}}
        ---
        ## Where it sits

        {{text.Sentences(200)}}

        ## What it does

        {{text.Sentences(250)}}

        ## How it fails

        {{text.Sentences(200)}} See [the fault](../faults/{{Slug("fault", block, i)}}.md).

        """;

    string Symptom(int block, int i) => $$"""
        ---
        name: {{Name()}}
        summary: {{text.Sentences(15)}}
        sense: {{Any(["feel", "hear", "see", "smell"])}}
        drive: gently
        ---
        ## What you notice

        {{text.Sentences(400)}}

        ## May I drive?

        {{text.Sentences(100)}} See [the tree](../trees/{{Slug("tree", block, i)}}.yml).

        """;

    string Tree(int block, int i)
    {
        var nodes = new StringBuilder();
        for (var at = 0; at < Checks; at++)
            nodes.Append(CultureInfo.InvariantCulture, $$"""
                  n{{at}}:
                    do: {{Slug("check", block, at)}}
                    why: {{text.Sentences(12)}}
                    outcomes: { bad: f{{at}}, good: {{(at + 1 < Checks ? $"n{at + 1}" : "last")}} }
                    cannot-tell: end
                  f{{at}}: { fault: {{Slug("fault", block, at)}} }

                """);
        return $$"""
            name: {{Name()}}
            symptom: {{Slug("symptom", block, i)}}
            summary: {{text.Sentences(15)}}
            start: n0
            nodes:
            {{nodes.ToString().TrimEnd()}}
              last: { fault: {{Slug("fault", block, Checks)}} }
              end: { advice: "{{text.Sentences(10)}}", drive: gently }

            """;
    }

    string Task(int block) => $$"""
        ---
        name: {{Name()}} {{block}}
        summary: {{text.Sentences(15)}}
        minutes: 10
        tools: [code reader]
        ---
        ## Safety

        {{text.Sentences(36)}}

        ## Do it

        {{Steps(8, 60)}}

        """;

    string Case(int block, int i)
    {
        var (fault, day) = (text.Chance.Next(Faults), new DateOnly(2014, 1, 1).AddDays(text.Chance.Next(4000)));
        return $$"""
            date: {{day:yyyy-MM-dd}}
            variant: {{(i % 3 == 0 ? "w16p" : "w20d")}}
            distance: {{40_000 + (i * 1_000) + block}}
            scan: {{(i % 4 == 0 ? "all" : "engine")}}
            codes: { {{Code(block, fault, i % 3)}}: confirmed }
            symptoms: { present: [{{Slug("symptom", block, fault % 2)}}], absent: [] }
            checks: { {{Slug("check", block, fault % Checks)}}: {{(fault < Checks ? "bad" : "good")}} }
            found: {{Slug("fault", block, fault)}}
            changed: ["{{Name()}}"]
            minutes: {{60 + i}}
            spend: {{50 + i}}
            proof: { shown-before: true, one-change: true, cleared: true, monitor-passes: 3, codes-after: none, symptom-gone: true, follow-up: { days: 45, distance: 1800 } }
            note: "{{text.Sentences(20)}}"

            """;
    }

    string Steps(int count, int words) => string.Join('\n', Enumerable.Range(1, count).Select(n => $"{n}. {text.Sentences(words)}"));

    string Name() => RandomText.Capital(text.Words(3 + text.Chance.Next(3)));

    string Any(string[] words) => words[text.Chance.Next(words.Length)];

    static string Code(int block, int fault, int which) => Codes[((((block * Faults) + fault) * 3) + which) % Codes.Length];

    static string System(int block) => string.Create(CultureInfo.InvariantCulture, $"system-{block % Systems}");

    static string Slug(string kind, int block, int i) => string.Create(CultureInfo.InvariantCulture, $"{kind}-{block}-{i}");

    // Two of the invented words are words of the trade that call for a caution.
    void Put(string path, string content) => files[path] = Encoding.UTF8.GetBytes(
        content.Replace("jack", "jeck", StringComparison.OrdinalIgnoreCase).Replace("gut ", "gat ", StringComparison.OrdinalIgnoreCase));
}
