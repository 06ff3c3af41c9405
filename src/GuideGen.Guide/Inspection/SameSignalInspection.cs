using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Signals are sets of at least two signs that do not overlap, and a table of combinations is whole.</summary>
sealed class SameSignalInspection : IInspection
{
    /// <summary>A table of combinations doubles with every sign; nobody can fill in more.</summary>
    const int MostInTable = 4;

    const double Rounding = 0.005;

    public IEnumerable<Finding> Inspect(GuideContent guide) =>
        [.. Twice(guide), .. guide.Vehicle.Signals.SelectMany(s => Inspect(s.Key, s.Value))];

    static IEnumerable<Finding> Twice(GuideContent guide) =>
        from sign in guide.Vehicle.Signals.SelectMany(s => Signs(s.Value).Select(sign => (Signal: s.Key.Value, Sign: sign)))
        group sign by sign.Sign.Value into uses
        from use in uses.Skip(1)
        select Rules.SignalTwice.At(use.Sign.Span, use.Sign.Value, uses.First().Signal);

    static IEnumerable<Finding> Inspect(Located<string> name, SameSignal signal)
    {
        var usesTable = signal.Count.Value is SignalCount.Joint;
        if (signal.Size < 2 || (usesTable && signal.Size > MostInTable)) yield return Rules.SignalSize.At(name.Span, name.Value, $"{signal.Size}", $"{MostInTable}");
        else if (usesTable == signal.Joint.IsEmpty) yield return Rules.SignalTable.At(name.Span, name.Value, usesTable ? "has no table of combinations" : "has a table of combinations but does not count by it");
        else if (usesTable)
        {
            foreach (var (fault, row) in signal.Joint.Where(j => !IsWhole(signal, j.Value)))
            {
                yield return Rules.SignalTable.At(fault.Span, name.Value, $"needs each of {string.Join(", ", signal.Combinations)} once for '{fault.Value}', together 1");
            }
        }
    }

    static bool IsWhole(SameSignal signal, IEnumerable<KeyValuePair<Located<string>, Located<double>>> row) =>
        row.Select(r => r.Key.Value).Order(StringComparer.Ordinal).SequenceEqual(signal.Combinations) && Math.Abs(row.Sum(r => r.Value.Value) - 1) <= Rounding;

    static IEnumerable<Located<string>> Signs(SameSignal signal) =>
        [.. signal.Codes.Select(c => c.With(c.Value.ToString())), .. signal.Symptoms];
}
