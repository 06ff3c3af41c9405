using GuideGen.Diagnosis.Readings;

namespace GuideGen.Diagnosis.Tests.Readings;

/// <summary>Ohms over degrees Celsius.</summary>
static class SensorTables
{
    /// <summary>A 2.5 kohm engine-coolant thermistor, as its maker's data sheet has it.</summary>
    public static TableRow[] M { get; } = From(
        -40, 10, [45313, 26114, 15462, 9397, 5896, 3792, 2500, 1707, 1175, 834, 596, 436, 323, 243, 187, 144, 113, 89]);

    /// <summary>A 10 kohm thermistor of 1 %, as its maker's data page has it.</summary>
    public static TableRow[] N { get; } =
    [
        new(-55, 519910), new(-35, 158090), new(-20, 71668), new(-10, 44087), new(0, 27936), new(10, 18187),
        new(20, 12136), new(25, 10000), new(30, 8284), new(40, 5774), new(50, 4103), new(60, 2967), new(70, 2182),
        new(80, 1629), new(90, 1234), new(100, 946.6), new(110, 735.5), new(120, 578.1), new(130, 459.4),
        new(140, 368.8), new(150, 298.9),
    ];

    public static TableRow[] Named(string name) => name == "M" ? M : N;

    static TableRow[] From(double first, double step, double[] values) =>
        [.. values.Select((v, i) => new TableRow(first + step * i, v))];
}
