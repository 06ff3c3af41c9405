using GuideGen.Guide.Model;
using GuideGen.Site.Planning;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The pages that show a way in: home, codes, safety, terms and the list of each kind.</summary>
static class OverviewViews
{
    public static ScriptObject Home(ViewContext view)
    {
        var vehicle = view.Guide.Vehicle;
        return new ScriptObject
        {
            ["name"] = view.Guide.Settings.Title.Value,
            ["summary"] = view.Guide.Settings.Summary.Value,
            ["vehicle"] = vehicle.Summary.Value,
            ["variants"] = new ScriptArray(vehicle.Variants.Select(v => Variant(v.Value))),
            ["lamps"] = Lamps(view),
            ["senses"] = new ScriptArray(Enum.GetValues<Sense>().Skip(1).Select(s => BySense(view, s)).Where(g => ((ScriptArray)g["cards"]!).Count > 0)),
            ["systems"] = BySystem(view),
            ["tasks"] = view.Cards(view.Guide.Tasks.All),
            ["counts"] = Counts(view),
        };
    }

    public static ScriptObject Codes(ViewContext view)
    {
        return new ScriptObject
        {
            ["name"] = view.Words["codes.title"],
            ["summary"] = view.Words["codes.summary"],
            ["groups"] = new ScriptArray(view.Guide.CodeGroups.Select(g => new ScriptObject
            {
                ["block"] = g.Name,
                ["area"] = g.Area.Name,
                ["href"] = view.Links.To(Addresses.OfGroup(g.Name)),
                ["codes"] = new ScriptArray(g.Rows.Where(r => r.HasPage).Select(r => view.Code(r.Code))),
            })),
        };
    }

    public static ScriptObject Safety(ViewContext view) => new()
    {
        ["name"] = view.Words["safety.title"],
        ["summary"] = view.Words["safety.summary"],
        ["cautions"] = CautionView.Of(view, view.Guide.Hazards.Select(h => new Guide.Text.Located<string>(h.Key, h.Value.Name.Span))),
    };

    public static ScriptObject Terms(ViewContext view) => new()
    {
        ["name"] = view.Words["terms.title"],
        ["summary"] = view.Words["terms.summary"],
        ["terms"] = new ScriptArray(view.Guide.Terms.OrderBy(t => t.Key.Value, StringComparer.InvariantCultureIgnoreCase).Select(t => new ScriptObject
        {
            ["name"] = t.Key.Value,
            ["anchor"] = Guide.Pages.Anchors.Of(t.Key.Value),
            ["means"] = t.Value.Means.Value,
            ["also"] = new ScriptArray(t.Value.Also.Select(a => a.Value)),
        })),
    };

    public static ScriptObject Report(ViewContext view) => new()
    {
        ["name"] = view.Words["report.title"],
        ["summary"] = view.Words["report.summary"],
    };

    public static ScriptObject Record(ViewContext view) => new()
    {
        ["name"] = view.Words["record.title"],
        ["summary"] = view.Words["record.summary"],
    };

    public static ScriptObject NotFound(ViewContext view) => new()
    {
        ["name"] = view.Words["not-found.title"],
        ["summary"] = view.Words["not-found.summary"],
    };

    public static ScriptObject List(ViewContext view, ListPage page)
    {
        var kind = NameKinds.Folder(page.Kind);
        return new ScriptObject
        {
            ["name"] = view.Words[$"lists.{kind}.title"],
            ["summary"] = view.Words[$"lists.{kind}.summary"],
            ["kind"] = kind,
            ["groups"] = page.Kind switch
            {
                ContentKind.Fault or ContentKind.Part => BySystem(view, page),
                ContentKind.Symptom => new ScriptArray(Enum.GetValues<Sense>().Select(s => BySense(view, s)).Where(g => ((ScriptArray)g["cards"]!).Count > 0)),
                _ => new ScriptArray { Group("", view.Cards(page.Entries)) },
            },
        };
    }

    static ScriptArray BySystem(ViewContext view, ListPage page) =>
    [
        .. view.Guide.Vehicle.Systems
            .Select(s => Group(s.Value.Value, view.Cards(page.Entries.Where(e => SystemOf(e) == s.Key.Value))))
            .Where(g => ((ScriptArray)g["cards"]!).Count > 0),
    ];

    static string? SystemOf(IGuideEntry entry) => entry switch
    {
        Fault fault => fault.System.Value,
        Part part => part.System.Value,
        _ => null,
    };

    static ScriptObject Group(string title, ScriptArray cards) => new() { ["title"] = title, ["cards"] = cards };

    static ScriptArray BySystem(ViewContext view) =>
    [
        .. view.Guide.Vehicle.Systems
            .Select(s => Group(s.Value.Value, view.Cards(view.Guide.Faults.All.Where(f => f.System.Value == s.Key.Value).OrderByDescending(f => f.Belief.Value).ThenBy(f => f.Origin.Slug, StringComparer.Ordinal))))
            .Where(g => ((ScriptArray)g["cards"]!).Count > 0),
    ];

    static ScriptObject BySense(ViewContext view, Sense sense) =>
        Group(view.Words["sense." + SymptomView.Key(sense)], view.Cards(view.Guide.Symptoms.All.Where(s => s.Sense.Value == sense).OrderBy(s => s.Drive.Value)));

    /// <summary>The warning lamps as they look, the one that stops the vehicle first.</summary>
    static ScriptArray Lamps(ViewContext view) =>
    [
        .. view.Guide.Symptoms.All.Where(s => s.Sense.Value == Sense.Lamp).GroupBy(s => s.Drive.Value).OrderBy(g => g.Key).Select(g => new ScriptObject
        {
            ["drive"] = DriveWords.Key(g.Key),
            ["lamps"] = new ScriptArray(g.Select(s =>
            {
                var card = view.Card(s);
                card["lamp"] = s.Lamp?.Value;
                return card;
            })),
        }),
    ];

    static ScriptObject Variant(Variant variant) => new()
    {
        ["name"] = variant.Name.Value,
        ["engine"] = variant.Engine.Value,
        ["years"] = variant.Years.Value.ToString(),
    };

    static ScriptObject Counts(ViewContext view) => new()
    {
        ["faults"] = view.Guide.Faults.All.Length,
        ["codes"] = view.Guide.AllCodes.Length,
        ["checks"] = view.Guide.Checks.All.Length,
        ["cases"] = view.Guide.CaseCount,
    };
}
