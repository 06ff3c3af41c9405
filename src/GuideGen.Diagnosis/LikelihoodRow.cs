using System.Collections;
using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;

namespace GuideGen.Diagnosis;

/// <summary>
/// One likelihood for each cause, in the order of a model. Most causes share the usual value of their kind and only a few have one
/// of their own, and only this is kept: a guide with thousands of faults has as many signs and checks again.
/// </summary>
[CollectionBuilder(typeof(LikelihoodRow), nameof(Create))]
[JsonConverter(typeof(LikelihoodRowJson))]
public sealed class LikelihoodRow : IReadOnlyList<double>
{
    readonly double[] usual;
    readonly int[] places;
    readonly double[] own;

    LikelihoodRow(CauseKinds kinds, double[] usual, int[] places, double[] own) =>
        (Kinds, this.usual, this.places, this.own) = (kinds, usual, places, own);

    /// <summary>Of values one by one; the most frequent is the usual one, and the smallest of equally frequent ones.</summary>
    public static LikelihoodRow Create(ReadOnlySpan<double> values)
    {
        if (values.IsEmpty)
            return Of(0, 0, []);
        double[] all = values.ToArray();
        double usual = all.CountBy(v => v).OrderByDescending(v => v.Value).ThenBy(v => v.Key).First().Key;
        return Of(all.Length, usual, all.Select((v, i) => (i, v)).Where(v => v.v != usual));
    }

    /// <param name="count">Causes.</param>
    /// <param name="usual">What all have that are not named.</param>
    /// <param name="own">In any order, each place once.</param>
    public static LikelihoodRow Of(int count, double usual, IEnumerable<(int Place, double Value)> own) =>
        Of(new CauseKinds(count), [usual], own);

    /// <param name="usual">By kind.</param>
    internal static LikelihoodRow Of(CauseKinds kinds, double[] usual, IEnumerable<(int Place, double Value)> own)
    {
        (int Place, double Value)[] sorted = [.. own];
        Array.Sort(sorted, static (one, other) => one.Place.CompareTo(other.Place));
        return new(kinds, usual, Array.ConvertAll(sorted, o => o.Place), Array.ConvertAll(sorted, o => o.Value));
    }

    public int Count => Kinds.Count;

    public double this[int cause] =>
        Array.BinarySearch(places, cause) is var at and >= 0 ? own[at] : usual[Kinds.Of(cause)];

    internal CauseKinds Kinds { get; }

    internal ReadOnlySpan<double> Usual => usual;

    /// <summary>Causes with a value of their own, ascending.</summary>
    internal ReadOnlySpan<int> Places => places;

    /// <summary>The values at <see cref="Places"/>.</summary>
    internal ReadOnlySpan<double> Own => own;

    internal bool HasOwn(int cause) => Array.BinarySearch(places, cause) >= 0;

    public LikelihoodRow Map(Func<double, double> change) =>
        new(Kinds, Array.ConvertAll(usual, v => change(v)), places, Array.ConvertAll(own, v => change(v)));

    /// <summary>The same for other causes.</summary>
    /// <param name="chosen">Places in this row.</param>
    public LikelihoodRow For(IEnumerable<int> chosen) => [.. chosen.Select(c => this[c])];

    public double[] ToArray()
    {
        double[] all = new double[Count];
        for (int c = 0; c < all.Length; c++)
            all[c] = usual[Kinds.Of(c)];
        for (int i = 0; i < places.Length; i++)
            all[places[i]] = own[i];
        return all;
    }

    public IEnumerator<double> GetEnumerator() => ToArray().AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Each value that occurs, with how many causes have it; a value can come more than once.</summary>
    internal IEnumerable<(double Value, int Causes)> Values()
    {
        int[] left = [.. Kinds.Sizes];
        foreach (int place in places)
            left[Kinds.Of(place)]--;
        for (int kind = 0; kind < left.Length; kind++)
            if (left[kind] > 0)
                yield return (usual[kind], left[kind]);
        foreach (double value in own)
            yield return (value, 1);
    }
}
