using System.Collections.Immutable;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>What putting a fault right takes: hours, money, tools and skill.</summary>
/// <param name="OwnHours">Hours of an owner with the tools at hand.</param>
/// <param name="WorkshopHours">Hours a workshop charges.</param>
/// <param name="Skill">1 (look and clean) to 4 (experienced, special tools).</param>
public sealed record Repair(
    Located<double> OwnHours,
    Located<double> WorkshopHours,
    Located<int> Skill,
    ImmutableArray<Located<string>> Tools,
    ImmutableArray<Purchase> Parts,
    ImmutableArray<Purchase> Consumables)
{
    /// <summary>Parts and consumables together, in the guide's currency.</summary>
    public MoneyRange Materials => Parts.Concat(Consumables).Aggregate(default(MoneyRange), (sum, p) => sum + p.Total);
}

/// <summary>Something to buy.</summary>
/// <param name="Part">The part page it belongs to, if there is one.</param>
public sealed record Purchase(Located<string> Name, Located<string>? Part, Located<MoneyRange> Price, Located<int>? Quantity)
{
    public int Count => Quantity?.Value ?? 1;

    public MoneyRange Total => Price.Value * Count;
}

sealed class RepairShape : RecordShape<Repair>
{
    readonly Field<Located<double>> ownHours;
    readonly Field<Located<double>> workshopHours;
    readonly Field<Located<int>> skill;
    readonly Field<ImmutableArray<Located<string>>> tools;
    readonly Field<ImmutableArray<Purchase>> parts;
    readonly Field<ImmutableArray<Purchase>> consumables;

    public RepairShape()
    {
        ownHours = Required("own-hours", Scalars.Number(0, 200), "Hours of your own work.");
        workshopHours = Required("workshop-hours", Scalars.Number(0, 200), "Hours a workshop charges for it.");
        skill = Required("skill", Scalars.Whole(1, 4), "1 (look and clean) to 4 (experienced, special tools).");
        tools = Optional("tools", Collections.Texts, [], "Tools needed, one per line.");
        parts = Optional("parts", Collections.ListOf(new PurchaseShape()), [], "Parts to buy, with what they cost.");
        consumables = Optional("consumables", Collections.ListOf(new PurchaseShape()), [], "Seals, clips, fluids and the like.");
    }

    protected override Repair Make(RecordValues v) =>
        new(v.Get(ownHours), v.Get(workshopHours), v.Get(skill), v.Get(tools), v.Get(parts), v.Get(consumables));
}

sealed class PurchaseShape : RecordShape<Purchase>
{
    readonly Field<Located<string>> name;
    readonly Field<Located<string>?> part;
    readonly Field<Located<MoneyRange>> price;
    readonly Field<Located<int>?> quantity;

    public PurchaseShape()
    {
        name = Required("name", Scalars.Text, "What to ask for in the shop.");
        part = Optional("part", Maybe.Of(Scalars.Name(NameKind.Part)), null, "The part page it belongs to.");
        price = Required("price", Scalars.Price, "What one costs, or from-to.");
        quantity = Optional("quantity", Maybe.Of(Scalars.Whole(1, 1_000)), null, "How many; 1 if left out.");
    }

    protected override Purchase Make(RecordValues v) => new(v.Get(name), v.Get(part), v.Get(price), v.Get(quantity));
}
