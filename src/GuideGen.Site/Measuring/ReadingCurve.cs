using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GuideGen.Diagnosis.Readings;
using GuideGen.Site.Rendering;

namespace GuideGen.Site.Measuring;

/// <summary>
/// The good range of a reading over another quantity as a picture: a band between the lower and the upper limit, a dot row
/// for each row of the table. Where the table is read over ln and 1/T, the value axis is logarithmic.
/// </summary>
public sealed class ReadingCurve
{
    public const int Width = 360, Height = 240, Left = 56, Right = 348, Top = 12, Bottom = 204;

    const int Points = 48;

    static readonly ImmutableArray<int> RoundDigits = [1, 2, 5];

    readonly LimitTable table;
    readonly ImmutableArray<LimitRow> rows;

    public ReadingCurve(ImmutableArray<LimitRow> rows, TableScale scale)
    {
        this.rows = [.. rows.OrderBy(r => r.Key)];
        table = new LimitTable(this.rows, scale);
        IsLogarithmic = scale == TableScale.LogOverInverseKelvin;
        Keys = new Axis(this.rows[0].Key, this.rows[^1].Key, Left, Right);
        var (low, high) = (this.rows.Min(r => r.Low), this.rows.Max(r => r.High));
        Values = new Axis(Scaled(low), Scaled(high), Bottom, Top);
    }

    public bool IsLogarithmic { get; }

    public Axis Keys { get; }

    /// <summary>Over the natural logarithm where the picture is logarithmic.</summary>
    public Axis Values { get; }

    /// <param name="label">Says in words what the picture shows.</param>
    public HtmlText Draw(string label)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg class=\"curve\" viewBox=\"0 0 {Width} {Height}\" role=\"img\" aria-label=\"{HtmlText.Escape(label)}\">");
        foreach (var row in rows) AppendKey(svg, row.Key);
        foreach (var value in ValueTicks()) AppendValue(svg, value);
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"curve-band\" d=\"{Band()}\"/>");
        foreach (var row in rows) svg.Append(CultureInfo.InvariantCulture, $"<path class=\"curve-row\" d=\"M{At(row.Key, row.Low)}L{At(row.Key, row.High)}\"/>");
        return new HtmlText(svg.Append("<circle class=\"curve-mark\" r=\"6\" cx=\"0\" cy=\"0\" visibility=\"hidden\"/></svg>").ToString());
    }

    string Band()
    {
        var keys = Enumerable.Range(0, Points + 1).Select(i => Keys.From + ((Keys.To - Keys.From) * i / Points)).Concat(rows.Select(r => r.Key)).Distinct().Order().ToList();
        var limits = keys.Select(k => (Key: k, At: table.At(k))).Where(l => l.At is not null).Select(l => (l.Key, At: l.At!.Value)).ToList();
        var points = limits.Select(l => At(l.Key, l.At.Low!.Value)).Concat(limits.AsEnumerable().Reverse().Select(l => At(l.Key, l.At.High!.Value)));
        return $"M{string.Join('L', points)}Z";
    }

    /// <summary>At most six values: powers of ten with their 2 and 5 on a logarithmic axis, round steps on a straight one.</summary>
    List<double> ValueTicks()
    {
        if (IsLogarithmic)
        {
            var all = Enumerable.Range(-6, 16).SelectMany(p => RoundDigits.Select(d => d * Math.Pow(10, p))).Where(v => Math.Log(v) >= Values.From && Math.Log(v) <= Values.To).ToList();
            return all.Count <= 6 ? all : [.. all.Where(v => Math.Log10(v) % 1 == 0)];
        }

        var width = Values.To - Values.From;
        if (width <= 0) return [Values.From];
        var step = Math.Pow(10, Math.Floor(Math.Log10(width / 3)));
        while (width / step > 6) step *= 2;
        return [.. Enumerable.Range(0, 8).Select(i => (Math.Ceiling(Values.From / step) + i) * step).Where(v => v <= Values.To)];
    }

    void AppendKey(StringBuilder svg, double key) => svg
        .Append(CultureInfo.InvariantCulture, $"<path class=\"curve-line\" d=\"M{N(Keys.At(key))} {Top}V{Bottom}\"/>")
        .Append(CultureInfo.InvariantCulture, $"<text x=\"{N(Keys.At(key))}\" y=\"{Bottom + 20}\" text-anchor=\"middle\">{N(key)}</text>");

    void AppendValue(StringBuilder svg, double value) => svg
        .Append(CultureInfo.InvariantCulture, $"<path class=\"curve-line\" d=\"M{Left} {N(Values.At(Scaled(value)))}H{Right}\"/>")
        .Append(CultureInfo.InvariantCulture, $"<text x=\"{Left - 6}\" y=\"{N(Values.At(Scaled(value)) + 4)}\" text-anchor=\"end\">{N(value)}</text>");

    double Scaled(double value) => IsLogarithmic ? Math.Log(value) : value;

    string At(double key, double value) => $"{N(Keys.At(key))} {N(Values.At(Scaled(value)))}";

    static string N(double number) => Math.Round(number, 2).ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>From a number to a place on the picture.</summary>
/// <param name="From">The number at <paramref name="Start"/>.</param>
/// <param name="To">The number at <paramref name="End"/>.</param>
public readonly record struct Axis(double From, double To, double Start, double End)
{
    public double At(double number) => To == From ? (Start + End) / 2 : Start + ((number - From) / (To - From) * (End - Start));
}
