using GuideGen.Guide.Model;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

static class FaultView
{
    public static ScriptObject Of(ViewContext view, Fault fault)
    {
        var relations = view.Guide.Relations;
        var model = EntryView.HandsOn(view, fault);
        model["slug"] = fault.Origin.Slug;
        model["system"] = view.SystemName(fault.System);
        model["drive"] = DriveWords.Key(fault.Drive.Value);
        model["codes"] = new ScriptArray(fault.Codes.Select(c => Sign(view.Code(c.Key.Value), c.Value.Value)));
        model["symptoms"] = new ScriptArray(fault.Symptoms.Select(s => Sign(view.Card(view.Guide.Symptoms.Find(s.Key.Value)!), s.Value.Value)));
        model["parts"] = view.Cards(fault.Parts.Select(p => view.Guide.Parts.Find(p.Value)!));
        model["checks"] = view.Cards(fault.Checks.Select(c => view.Guide.Checks.Find(c.Value)!));
        model["trees"] = view.Cards(relations.TreesByFault(fault.Origin.Slug));
        model["repair"] = Repair(view, fault);
        model["often"] = EvidenceView.Often(view, fault);
        model["evidence"] = EvidenceView.Of(view, fault);
        model["money"] = MoneyView.Of(view, fault);
        model["cases"] = CaseView.Of(view, relations.CasesByFault(fault.Origin.Slug));
        return model;
    }

    static ScriptObject Sign(ScriptObject card, Likelihood likelihood)
    {
        card["likelihood"] = likelihood.InWords();
        return card;
    }

    static ScriptObject Repair(ViewContext view, Fault fault)
    {
        var repair = fault.Repair;
        return new ScriptObject
        {
            ["own_time"] = view.Hours(repair.OwnHours.Value),
            ["workshop_time"] = view.Hours(view.Guide.Vehicle.Bill.DiagnosisHours.Value + repair.WorkshopHours.Value),
            ["skill"] = repair.Skill.Value,
            ["own_money"] = view.Money(repair.Materials),
            ["workshop_money"] = MoneyView.WorkshopBill(view, fault),
            ["parts"] = new ScriptArray(repair.Parts.Select(p => Purchase(view, p))),
            ["consumables"] = new ScriptArray(repair.Consumables.Select(p => Purchase(view, p))),
        };
    }

    static ScriptObject Purchase(ViewContext view, Purchase purchase) => new()
    {
        ["name"] = purchase.Name.Value,
        ["href"] = purchase.Part is { } part ? view.Links.Of(view.Guide.Parts.Find(part.Value)!) : null,
        ["quantity"] = purchase.Count,
        ["price"] = view.Money(purchase.Price.Value),
    };
}
