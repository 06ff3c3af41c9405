using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Diagnosis.Trees;
using GuideGen.Guide;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Site.Trees;

namespace GuideGen.Commands;

/// <summary>What trees cost, for people and for programs.</summary>
sealed class TreeEvidenceReport(GuideContent guide, TreeEvidences evidences)
{
    static readonly Dictionary<BestOrder, string> Ways = new()
    {
        [BestOrder.AsWritten] = "as written",
        [BestOrder.Moved] = "checks exchanged",
        [BestOrder.Exact] = "built anew, exact",
        [BestOrder.Greedy] = "built anew, not proved the cheapest",
    };

    public void WriteText(TextWriter output)
    {
        foreach (var (tree, rows) in Rows())
        {
            output.WriteLine(Printable.Line($"{tree.Origin.Slug}: {tree.Name.Value}{(tree.Computed is { } order ? $" (built by the tool, {order.Method})" : "")}"));
            foreach (var row in rows) WriteText(output, row);
        }

        output.WriteLine("Minutes and money are averages over the causes, for somebody who can make every check; each cause is confirmed before a part is bought.");
        output.WriteLine("Questions without stated chances are taken to be answered as the true cause would have it. Their minutes count in every order, also where a tree was built anew from its checks.");
        output.WriteLine("Where checks can err, going on is weighed against a wrong repair: the average own hours and materials, 20 of the currency counted as an hour.");
    }

    /// <summary>Trees do not depend on each other.</summary>
    (Tree Tree, ImmutableArray<TreeEvidence> Rows)[] Rows() => SideBySide.Map([.. guide.Trees.All], t => (t, evidences.Of(t)));

    void WriteText(TextWriter output, TreeEvidence row)
    {
        output.WriteLine($"  {row.Variant}: {Costs(row.Written)}; finds {Share(row.Written.Coverage)}, wrong {Share(row.Written.WrongLeaf)}, no answer {Share(row.Written.NoAnswer)}");
        var saving = row.Written.Expected.Minutes - row.Best.Expected.Minutes;
        output.WriteLine(row.How == BestOrder.AsWritten
            ? "    no cheaper order found"
            : $"    best {Costs(row.Best)}; saves {Minutes(saving)} ({Ways[row.How]}); finds {Share(row.Best.Coverage)}");
        if (row.Move is { } move) output.WriteLine($"    most by: {move.Check} before {move.Before}, saves {Minutes(move.Minutes)}");
        output.WriteLine($"    if its checks err as they state: {Stopping(row.Stopping.Plan)}");
    }

    static string Stopping(StoppingPlan plan) => plan.Root is StoppingEnd
        ? $"none pays for its minutes; the likeliest cause alone is wrong in {Share(plan.ChanceWrong)}"
        : $"stop after {Minutes(plan.Expected.Minutes)} on average and repair the likeliest, wrong in {Share(plan.ChanceWrong)}{LeftOut(plan)}";

    static string LeftOut(StoppingPlan plan) => plan.LeftOut.IsEmpty ? "" : $"; {plan.LeftOut.Length} checks that tell less were too many to weigh";

    string Costs(TreeCost cost)
    {
        var currency = guide.Vehicle.Currency.Value;
        return $"expected {Minutes(cost.Expected.Minutes)} and {Money(cost.Expected.Money)} {currency}, worst {Minutes(cost.Worst.Minutes)} and {Money(cost.Worst.Money)} {currency}";
    }

    public void WriteJson(TextWriter output)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" })) WriteJson(json);
        output.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }

    void WriteJson(Utf8JsonWriter json)
    {
        json.WriteStartArray();
        foreach (var (tree, rows) in Rows())
        {
            json.WriteStartObject();
            json.WriteString("tree", tree.Origin.Slug);
            json.WriteString("name", tree.Name.Value);
            json.WriteString("built", tree.Computed?.Method);
            json.WriteStartArray("variants");
            foreach (var row in rows) Write(json, row);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    static void Write(Utf8JsonWriter json, TreeEvidence row)
    {
        json.WriteStartObject();
        json.WriteString("variant", row.Variant);
        Write(json, "written", row.Written);
        Write(json, "best", row.Best);
        json.WriteString("how", Ways[row.How]);
        json.WriteNumber("saved-minutes", Rounded(row.Written.Expected.Minutes - row.Best.Expected.Minutes));
        if (row.Move is { } move)
        {
            json.WriteStartObject("move");
            json.WriteString("check", move.Check);
            json.WriteString("before", move.Before);
            json.WriteNumber("saved-minutes", Rounded(move.Minutes));
            json.WriteEndObject();
        }

        json.WriteStartObject("if-checks-err");
        json.WriteNumber("wrong-repair-minutes", Rounded(row.Stopping.WrongRepair));
        json.WriteNumber("expected-minutes", Rounded(row.Stopping.Plan.Expected.Minutes));
        json.WriteNumber("wrong", Rounded(row.Stopping.Plan.ChanceWrong));
        json.WriteStartArray("left-out");
        foreach (var check in row.Stopping.Plan.LeftOut) json.WriteStringValue(check);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    static void Write(Utf8JsonWriter json, string name, TreeCost cost)
    {
        json.WriteStartObject(name);
        json.WriteNumber("expected-minutes", Rounded(cost.Expected.Minutes));
        json.WriteNumber("expected-money", Rounded(cost.Expected.Money));
        json.WriteNumber("worst-minutes", Rounded(cost.Worst.Minutes));
        json.WriteNumber("worst-money", Rounded(cost.Worst.Money));
        json.WriteNumber("finds", Rounded(cost.Coverage));
        json.WriteNumber("wrong", Rounded(cost.WrongLeaf));
        json.WriteNumber("no-answer", Rounded(cost.NoAnswer));
        json.WriteNumber("most-steps", cost.Deepest);
        json.WriteEndObject();
    }

    static double Rounded(double value) => Math.Round(value, 3) + 0;

    static string Minutes(double minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes:0.0} min");

    static string Money(double money) => money.ToString("0.00", CultureInfo.InvariantCulture);

    static string Share(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");
}
