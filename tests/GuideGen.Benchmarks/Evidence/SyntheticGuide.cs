using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Benchmarks.Evidence;

/// <summary>
/// A guide whose truth is known: how often each cause is behind the trouble and how likely it shows each finding. The
/// author knows both only roughly, and owners report solved cases drawn from the truth.
/// </summary>
sealed class SyntheticGuide
{
    // The table of words that authors have for how likely something is.
    static readonly double[] Words = [0.03, 0.08, 0.35, 0.75, 0.95];

    // Of what an owner could have told, so much is not in the report.
    const double Untold = 0.3;

    /// <summary>What the author says that his opinion is worth, in cases.</summary>
    public const double AuthorsWorth = 10;

    readonly Random random;
    readonly double[] shares;
    readonly double[][] likelihoods;

    public SyntheticGuide(int seed)
    {
        random = new Random(seed);
        var causes = random.Next(4, 13);
        shares = Normalised([.. Enumerable.Range(0, causes + 1).Select(i => -Math.Log(random.NextDouble()) * (i == causes ? 0.3 : 1))]);
        likelihoods = [.. Enumerable.Range(0, 10).Select(_ => shares.Select(_ => Spread(Words[random.Next(Words.Length)], 0.7)).ToArray())];
        Minutes = [.. Enumerable.Range(0, causes).Select(_ => Math.Round(5 * Math.Pow(12, random.NextDouble())))];
        Authored = Author();
        Cases = [.. Enumerable.Range(0, random.Next(5, 81)).Select(i => Draw(i))];
    }

    /// <summary>True shares in the order of the model, something else last.</summary>
    public IReadOnlyList<double> Shares => shares;

    /// <summary>What the check of each cause takes.</summary>
    public ImmutableArray<double> Minutes { get; }

    public RankingModel Authored { get; }

    /// <summary>The author's shares, which sum to 1.</summary>
    public IEnumerable<KeyValuePair<string, double>> Opinion => Authored.Hypotheses.Select(h => KeyValuePair.Create(h.Id, h.Prior / AuthorsWorth));

    public ImmutableArray<SolvedCase> Cases { get; }

    /// <summary>The truth as a ranking model: nobody can rank better than it.</summary>
    public RankingModel Truth => Model(shares, likelihoods);

    public SolvedCase Draw(int number)
    {
        var cause = Pick();
        var findings = Enumerable.Range(0, likelihoods.Length).Where(_ => random.NextDouble() >= Untold)
            .ToImmutableDictionary(f => Name('f', f), f => random.NextDouble() < likelihoods[f][cause]);
        return new SolvedCase(Name('v', number), Authored.Hypotheses[cause].Id, new Answers(findings, Answers.Nothing.Outcomes)
        {
            LookedFor = findings.Keys.ToHashSet(), // what is told was drawn without regard to what it is
        });
    }

    /// <summary>Right within a factor of about two for shares, and to the nearest word or the next for likelihoods.</summary>
    RankingModel Author()
    {
        var opinion = Normalised([.. shares.Select(s => s * Math.Exp(0.7 * Gauss()))]);
        return Model([.. opinion.Select(o => o * AuthorsWorth)], [.. likelihoods.Select(row => row.Select(l => Words.MinBy(w => Math.Abs(w - Spread(l, 0.7)))).ToArray())]);
    }

    static RankingModel Model(double[] priors, double[][] likelihoods) => RankingModel.Create(
        priors.SkipLast(1).Select((p, i) => new Hypothesis(Name('c', i), p)),
        priors[^1],
        new ModelParts { Findings = [.. likelihoods.Select((row, f) => new Finding(Name('f', f), [.. row]))] });

    /// <summary>Moved on the logistic scale, so that it stays between 0 and 1.</summary>
    double Spread(double likelihood, double by) => 1 / (1 + ((1 - likelihood) / likelihood * Math.Exp(by * Gauss())));

    double Gauss() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    int Pick()
    {
        var left = random.NextDouble();
        var cause = 0;
        while (cause < shares.Length - 1 && (left -= shares[cause]) >= 0) cause++;
        return cause;
    }

    static double[] Normalised(double[] weights) => [.. weights.Select(w => w / weights.Sum())];

    static string Name(char kind, int number) => kind + number.ToString("00", CultureInfo.InvariantCulture);
}
