using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Asking;
using GuideGen.Site.Planning;
using GuideGen.Site.Rendering;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>What views are made from, for one page: the guide, the theme's words, and where things are from here.</summary>
/// <param name="asked">Takes down what is asked of the guide, by one thread; null if nobody wants to know.</param>
public sealed class ViewContext(SitePlan plan, Theme theme, string address, AskedItems? asked = null)
{
    public AskedGuide Guide { get; } = new(plan, asked);

    public ThemeWords Words => theme.Words;

    public string Address { get; } = address;

    public PageLinks Links { get; } = new(plan, address, asked);

    /// <summary>An amount such as 35 to 80 EUR.</summary>
    public string Money(MoneyRange range)
    {
        var currency = Guide.Vehicle.Currency.Value;
        var (low, high) = (Amount(range.Low), Amount(range.High));
        return low == high ? $"{low} {currency}" : Fill("units.range", low, high) + " " + currency;
    }

    string Amount(decimal amount) => amount.ToString(amount == decimal.Truncate(amount) ? "0" : "0.00", Words.Culture);

    public string Hours(double hours) =>
        hours < 1 ? Minutes(hours * 60) : Fill("units.hours", Number(hours));

    public string Minutes(double minutes) => Fill("units.minutes", Number(minutes));

    public string Distance(double distance) =>
        distance.ToString("#,0", Words.Culture) + " " + Guide.Vehicle.DistanceUnit.Value;

    public string Date(DateOnly date) => Words.Write(date);

    public string Number(double number) => Math.Round(number, 2).ToString("0.##", Words.Culture);

    public string Fill(string words, params string[] values) => string.Format(Words.Culture, Words[words], values);

    /// <summary>A wording in the form that stands beside a number.</summary>
    public string Count(string words, long number, params string[] values) => string.Format(Words.Culture, Words.FormOf(words, number), values);

    /// <summary>The variants an entry applies to, or nothing for all of them.</summary>
    public ScriptArray Variants(IGuideEntry entry) => [.. entry.Variants.Select(v => VariantName(v.Value))];

    public string VariantName(string slug) => Guide.Vehicle.Variants.First(v => v.Key.Value == slug).Value.Name.Value;

    public string SystemName(Located<string> slug) => Guide.Vehicle.Systems.First(s => s.Key.Value == slug.Value).Value.Value;

    public Setup Setup(Located<string> slug) => Guide.Vehicle.Setups.First(s => s.Key.Value == slug.Value).Value;

    /// <summary>What stands on a card that links to an entry.</summary>
    public ScriptObject Card(IGuideEntry entry) => new()
    {
        ["name"] = entry.Name.Value,
        ["summary"] = entry.Summary.Value,
        ["href"] = Links.Of(entry),
        ["kind"] = NameKinds.Folder(entry.Origin.Kind!.Value),
        ["drive"] = DriveOf(entry),
        ["code"] = entry is CodePage code ? code.Code.ToString() : null,
        ["minutes"] = entry is Check check ? Minutes(check.Minutes.Value) : null,
        ["variants"] = Variants(entry),
    };

    public ScriptArray Cards(IEnumerable<IGuideEntry> entries) => [.. entries.Select(Card)];

    /// <summary>A fault as a card, with how likely it shows the sign at hand.</summary>
    public ScriptObject Card(LikelyFault likely)
    {
        var card = Card(likely.Fault);
        card["likelihood"] = likely.Likelihood.InWords();
        return card;
    }

    public ScriptObject Code(TroubleCode code) => new()
    {
        ["code"] = code.ToString(),
        ["href"] = Links.ToCode(code),
        ["meaning"] = CodeWords.MeaningOf(this, code),
    };

    static string? DriveOf(IGuideEntry entry) => entry switch
    {
        Fault fault => DriveWords.Key(fault.Drive.Value),
        Symptom symptom => DriveWords.Key(symptom.Drive.Value),
        _ => null,
    };
}
