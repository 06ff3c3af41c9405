using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>The one vehicle model that the guide is about.</summary>
/// <param name="Currency">ISO 4217 code of all prices in the guide.</param>
/// <param name="WorkshopRate">What a workshop charges for an hour.</param>
/// <param name="DistanceUnit">km or mi.</param>
/// <param name="Systems">Name of each system, by slug, in the order they are shown.</param>
/// <param name="Setups">Preparation that several checks share, by slug.</param>
public sealed record Vehicle(
    Located<string> Name,
    Located<string> Summary,
    Located<YearRange> Years,
    Located<string> Currency,
    Located<double> WorkshopRate,
    Located<string> DistanceUnit,
    ImmutableArray<KeyValuePair<Located<string>, Variant>> Variants,
    ImmutableArray<KeyValuePair<Located<string>, Located<string>>> Systems,
    ImmutableArray<KeyValuePair<Located<string>, Setup>> Setups)
{
    public WorkshopBill Bill { get; init; } = WorkshopBill.LabourAndPartsOnly;

    /// <summary>Codes and symptoms that go back to one signal, by a name for it.</summary>
    public ImmutableArray<KeyValuePair<Located<string>, SameSignal>> Signals { get; init; } = [];
}

/// <summary>What a workshop's bill holds beside the labour and the parts of a repair.</summary>
/// <param name="DiagnosisHours">Hours it counts for finding the fault.</param>
/// <param name="PartsMarkup">What it adds to the price of parts, in per cent.</param>
/// <param name="Tax">Tax on the whole bill, in per cent.</param>
public sealed record WorkshopBill(Located<double> DiagnosisHours, Located<double> PartsMarkup, Located<double> Tax)
{
    public static WorkshopBill LabourAndPartsOnly { get; } = new(default, default, default);
}

/// <summary>An engine, gearbox or year range of the vehicle.</summary>
public sealed record Variant(Located<string> Name, Located<string> Engine, Located<string> Fuel, Located<YearRange> Years);

/// <summary>Preparation such as taking the undertray off: counted once on a path, however many checks share it.</summary>
public sealed record Setup(Located<string> Name, Located<double> Minutes, ImmutableArray<Located<string>> Hazards);

sealed class VehicleShape : RecordShape<Vehicle>
{
    readonly Field<Located<string>> name;
    readonly Field<Located<string>> summary;
    readonly Field<Located<YearRange>> years;
    readonly Field<Located<string>> currency;
    readonly Field<Located<double>> workshopRate;
    readonly Field<Located<string>> distanceUnit;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Variant>>> variants;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Located<string>>>> systems;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, Setup>>> setups;
    readonly Field<WorkshopBill> bill;
    readonly Field<ImmutableArray<KeyValuePair<Located<string>, SameSignal>>> signals;

    public VehicleShape()
    {
        name = Required("name", Scalars.Text, "The vehicle model.");
        summary = Required("summary", Scalars.Text, "One sentence about it.");
        years = Required("years", Scalars.Years, "The years it was built.");
        currency = Required("currency", Currency, "The currency of all prices, as a code of three letters.");
        workshopRate = Required("workshop-rate", Scalars.Number(0, 100_000), "What a workshop charges for an hour.");
        bill = Optional("workshop-bill", new WorkshopBillShape(), WorkshopBill.LabourAndPartsOnly, "What a workshop's bill holds beside labour and parts.");
        distanceUnit = Required("distance-unit", Scalars.Word(("km", "km"), ("mi", "mi")), "km or mi.");
        variants = Required("variants", Collections.MapOf(Scalars.Key, new VariantShape(), 1), "The variants, by slug.");
        systems = Required("systems", Collections.MapOf(Scalars.Key, Scalars.Text, 1), "The systems, by slug, in the order to show them.");
        setups = Optional("setups", Collections.MapOf(Scalars.Key, new SetupShape()), [], "Preparation that checks share, by slug.");
        signals = Optional("same-signal", Collections.MapOf(Scalars.Key, new SameSignalShape()), [], "Codes and symptoms that go back to one signal and must not count twice.");
    }

    static Shape<Located<string>> Currency { get; } = new ScalarShape<string>(
        "a currency code of three capital letters such as EUR", t => (t.Length == 3 && t.All(char.IsAsciiLetterUpper), t), """{ "type": "string", "pattern": "^[A-Z]{3}$" }""", "EUR");

    protected override Vehicle Make(RecordValues v) => new(
        v.Get(name),
        v.Get(summary),
        v.Get(years),
        v.Get(currency),
        v.Get(workshopRate),
        v.Get(distanceUnit),
        v.Get(variants),
        v.Get(systems),
        v.Get(setups))
    {
        Bill = v.Get(bill),
        Signals = v.Get(signals),
    };
}

sealed class WorkshopBillShape : RecordShape<WorkshopBill>
{
    readonly Field<Located<double>> diagnosisHours;
    readonly Field<Located<double>> partsMarkup;
    readonly Field<Located<double>> tax;

    public WorkshopBillShape()
    {
        diagnosisHours = Optional("diagnosis-hours", Scalars.Number(0, 100), default, "Hours a workshop counts for finding the fault.");
        partsMarkup = Optional("parts-markup", Scalars.Number(0, 1000), default, "What it adds to the price of parts, in per cent.");
        tax = Optional("tax", Scalars.Number(0, 100), default, "Tax on the whole bill, in per cent.");
    }

    protected override WorkshopBill Make(RecordValues v) => new(v.Get(diagnosisHours), v.Get(partsMarkup), v.Get(tax));
}

sealed class VariantShape : RecordShape<Variant>
{
    readonly Field<Located<string>> name;
    readonly Field<Located<string>> engine;
    readonly Field<Located<string>> fuel;
    readonly Field<Located<YearRange>> years;

    public VariantShape()
    {
        name = Required("name", Scalars.Text, "What owners call it.");
        engine = Required("engine", Scalars.Text, "The engine in a few words.");
        fuel = Required("fuel", Fuels, "What it runs on.");
        years = Required("years", Scalars.Years, "The years it was built.");
    }

    static Shape<Located<string>> Fuels { get; } = Scalars.Word(
        ("diesel", "diesel"), ("petrol", "petrol"), ("hybrid", "hybrid"), ("electric", "electric"), ("gas", "gas"));

    protected override Variant Make(RecordValues v) => new(v.Get(name), v.Get(engine), v.Get(fuel), v.Get(years));
}

sealed class SetupShape : RecordShape<Setup>
{
    readonly Field<Located<string>> name;
    readonly Field<Located<double>> minutes;
    readonly Field<ImmutableArray<Located<string>>> hazards;

    public SetupShape()
    {
        name = Required("name", Scalars.Text, "What is prepared.");
        minutes = Required("minutes", Scalars.Number(0, 10_000), "How long it takes, there and back.");
        hazards = Optional("hazards", Collections.Names(NameKind.Hazard), [], "What can hurt someone doing it.");
    }

    protected override Setup Make(RecordValues v) => new(v.Get(name), v.Get(minutes), v.Get(hazards));
}
