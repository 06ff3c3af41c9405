namespace GuideGen.Diagnosis.Money;

/// <summary>What a repair takes at home and in a workshop. Sums in the guide's currency, shares 0 to 1.</summary>
public sealed record RepairCosts
{
    /// <summary>What the parts cost the owner.</summary>
    public required MoneyRange Parts { get; init; }

    public MoneyRange Consumables { get; init; }

    /// <summary>What this job bears of the tools bought for it.</summary>
    public decimal ToolShare { get; init; }

    public required decimal OwnHours { get; init; }

    /// <summary>How likely the own repair cures the fault; where it does not, the workshop's bill follows.</summary>
    public required decimal ChanceOfCure { get; init; }

    public required decimal WorkshopHours { get; init; }

    public decimal DiagnosisHours { get; init; }

    public required decimal WorkshopRate { get; init; }

    /// <summary>What the workshop adds to its parts: 0.35 for 35 %.</summary>
    public decimal PartsMarkup { get; init; }

    /// <summary>Tax on the workshop's bill: 0.19 for 19 %.</summary>
    public decimal Tax { get; init; }

    /// <summary>The owner's own hours for bringing and fetching the vehicle.</summary>
    public decimal TransportHours { get; init; }
}

/// <summary>Own work against a workshop, with the points where the choice turns over.</summary>
public sealed record RepairChoice(RepairCosts Costs)
{
    /// <summary>What the workshop charges, tax included.</summary>
    public MoneyRange WorkshopBill => (1 + Costs.Tax) * (
        MoneyRange.Exactly((Costs.DiagnosisHours + Costs.WorkshopHours) * Costs.WorkshopRate)
        + (1 + Costs.PartsMarkup) * Costs.Parts);

    /// <summary>What own work costs in money when it cures.</summary>
    public MoneyRange OwnCash => Costs.Parts + Costs.Consumables + MoneyRange.Exactly(Costs.ToolShare);

    /// <summary>What own work costs in money on average, the bill after a failure included.</summary>
    public MoneyRange OwnCashExpected => OwnCash + (1 - Costs.ChanceOfCure) * WorkshopBill;

    /// <param name="hourValue">What an hour of one's own is worth.</param>
    public MoneyRange Own(decimal hourValue) => OwnCashExpected + MoneyRange.Exactly(Costs.OwnHours * hourValue);

    public MoneyRange Workshop(decimal hourValue) =>
        WorkshopBill + MoneyRange.Exactly(Costs.TransportHours * hourValue);

    /// <summary>
    /// The value of an own hour above which the workshop is cheaper, from the middle of the ranges; null when own work
    /// takes no more hours than the way to the workshop, so that no value of an hour turns the choice.
    /// </summary>
    public decimal? BreakEvenHourValue => Costs.OwnHours > Costs.TransportHours
        ? (WorkshopBill.Middle - OwnCashExpected.Middle) / (Costs.OwnHours - Costs.TransportHours)
        : null;

    /// <summary>
    /// The chance of cure below which the workshop is cheaper, from the middle of the ranges. Below 0: own work is
    /// cheaper whatever the chance; above 1: never. Null when the workshop costs nothing.
    /// </summary>
    public decimal? BreakEvenChance(decimal hourValue) => WorkshopBill.Middle == 0
        ? null
        : 1 - (Workshop(hourValue).Middle - OwnCash.Middle - Costs.OwnHours * hourValue) / WorkshopBill.Middle;
}
