using System.Globalization;
using System.Text.Json;
using GuideGen.Diagnosis.Money;
using GuideGen.Guide.Model;
using GuideGen.Site.Rendering;
using Scriban.Runtime;
using Sum = GuideGen.Diagnosis.Money.MoneyRange;

namespace GuideGen.Site.Views;

/// <summary>Own work against a workshop, where the choice turns over, and whether to test before buying: in words, and as numbers for the form.</summary>
static class MoneyView
{
    // What the static words assume, and say so; the form takes the owner's own. Common practice, no source.
    const decimal HourValue = 20, Chance = 0.8m, TransportHours = 1;

    public static ScriptObject Of(ViewContext view, Fault fault)
    {
        var costs = CostsOf(view, fault);
        var choice = new RepairChoice(costs);
        return new ScriptObject
        {
            ["own"] = Range(view, choice.Own(HourValue)),
            ["workshop"] = Range(view, choice.Workshop(HourValue)),
            ["hour"] = HourWords(view, choice),
            ["chance"] = ChanceWords(view, choice),
            ["test"] = TestWords(view, fault, costs),
            ["all"] = view.Money(fault.Repair.Materials),
            ["assumed"] = view.Fill("money.assumed", Whole(HourValue), view.Guide.Vehicle.Currency.Value, Whole(Chance * 10), Whole(TransportHours)),
            ["bill"] = BillWords(view),
            ["prices"] = fault.Provenance.Reviewed is { } reviewed
                ? view.Fill("money.prices", view.Date(reviewed.Value), view.Guide.Vehicle.Currency.Value)
                : view.Fill("money.prices-undated", view.Guide.Vehicle.Currency.Value),
            ["hour_value"] = Whole(HourValue),
            ["chance_percent"] = Whole(Chance * 100),
            ["transport_hours"] = Whole(TransportHours),
            ["rate"] = Plain(costs.WorkshopRate),
            ["diagnosis_hours"] = Plain(costs.DiagnosisHours),
            ["markup_percent"] = Plain(costs.PartsMarkup * 100),
            ["tax_percent"] = Plain(costs.Tax * 100),
            ["own_hours"] = Plain(costs.OwnHours),
            ["data"] = JsonSerializer.Serialize(new MoneyData(costs.Parts, costs.Consumables, costs.WorkshopHours, view.Guide.Vehicle.Currency.Value), SiteJson.Default.MoneyData),
        };
    }

    public static RepairCosts CostsOf(ViewContext view, Fault fault) => new()
    {
        Parts = SumOf(fault.Repair.Parts),
        Consumables = SumOf(fault.Repair.Consumables),
        OwnHours = (decimal)fault.Repair.OwnHours.Value,
        WorkshopHours = (decimal)fault.Repair.WorkshopHours.Value,
        DiagnosisHours = (decimal)view.Guide.Vehicle.Bill.DiagnosisHours.Value,
        WorkshopRate = (decimal)view.Guide.Vehicle.WorkshopRate.Value,
        PartsMarkup = (decimal)view.Guide.Vehicle.Bill.PartsMarkup.Value / 100,
        Tax = (decimal)view.Guide.Vehicle.Bill.Tax.Value / 100,
        ChanceOfCure = Chance,
        TransportHours = TransportHours,
    };

    /// <summary>All that a workshop charges for the repair, as a range in words.</summary>
    public static string WorkshopBill(ViewContext view, Fault fault) => Range(view, new RepairChoice(CostsOf(view, fault)).WorkshopBill);

    static string BillWords(ViewContext view)
    {
        var bill = view.Guide.Vehicle.Bill;
        return bill == Guide.Model.WorkshopBill.LabourAndPartsOnly
            ? view.Words["money.bill-plain"]
            : view.Fill("money.bill", view.Number(bill.DiagnosisHours.Value), view.Number(bill.PartsMarkup.Value), view.Number(bill.Tax.Value));
    }

    static Sum SumOf(IEnumerable<Purchase> purchases) => purchases.Aggregate(default(Sum), (sum, p) => sum + new Sum(p.Total.Low, p.Total.High));

    static string HourWords(ViewContext view, RepairChoice choice) => choice.BreakEvenHourValue switch
    {
        null => view.Words["script.money.hourNone"],
        <= 0 => view.Words["script.money.hourNever"],
        { } value => view.Fill("script.money.hour", Whole(value), view.Guide.Vehicle.Currency.Value),
    };

    static string ChanceWords(ViewContext view, RepairChoice choice) => choice.BreakEvenChance(HourValue) switch
    {
        null or > 1 => view.Words["script.money.chanceNever"],
        <= 0 => view.Words["script.money.chanceAlways"],
        { } chance => view.Fill("script.money.chance", Whole(Math.Ceiling(chance * 10))),
    };

    /// <summary>By the first check that confirms the fault, its preparation included. Nothing where no check or nothing to buy is named.</summary>
    static string? TestWords(ViewContext view, Fault fault, RepairCosts costs)
    {
        if (fault.Checks.IsEmpty || fault.Repair.Parts.IsEmpty) return null;
        var check = view.Guide.Checks.Find(fault.Checks[0].Value)!;
        var minutes = check.Minutes.Value + check.Setup.Sum(s => view.Setup(s).Minutes.Value);
        var test = (minutes / 60 * (double)HourValue) + (check.Money?.Value ?? 0);
        var lost = (double)(costs.Parts.Middle + costs.Consumables.Middle + (costs.OwnHours * HourValue));
        var above = new TestOrReplace(test, lost, 0).ReplaceAbove;
        var known = new[] { check.Name.Value, Whole((decimal)test), view.Guide.Vehicle.Currency.Value, Whole((decimal)lost) };
        return above > 0 ? view.Fill("money.test", [.. known, Whole((decimal)Math.Ceiling(above * 20))]) : view.Fill("money.test-dear", known);
    }

    static string Range(ViewContext view, Sum sum) => view.Money(new Guide.Model.MoneyRange(Math.Round(sum.Low), Math.Round(sum.High)));

    /// <summary>As a script reads it, whatever the language.</summary>
    static string Plain(decimal number) => Math.Round(number, 2).ToString("0.##", CultureInfo.InvariantCulture);

    static string Whole(decimal number) => Math.Round(number, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);
}

/// <summary>What a page's script counts the money of a repair with.</summary>
sealed record MoneyData(Diagnosis.Money.MoneyRange Parts, Diagnosis.Money.MoneyRange Consumables, decimal WorkshopHours, string Currency);
