namespace GuideGen.Codes;

/// <summary>The catalogue's own language: subjects are kept in English, so they stand for themselves.</summary>
public sealed class EnglishWords : IMeaningWords
{
    public static EnglishWords Instance { get; } = new();

    public string Subject(string english) => english;

    public string Side(Side side, bool follows) => side.Kind switch
    {
        SideKind.Bank when side.Value.Contains(" and ", StringComparison.Ordinal) => "banks " + side.Value,
        SideKind.Bank => "bank " + side.Value,
        SideKind.Sensor => "sensor " + side.Value,
        SideKind.Cylinder => "cylinder " + side.Value,
        SideKind.Unit => "unit " + side.Value,
        SideKind.Catalyst => "catalyst " + side.Value,
        _ => side.Value,
    };

    public string Condition(ConditionInfo condition, bool inCircuit) => inCircuit ? "circuit " + condition.CircuitWords : condition.Words;
}
