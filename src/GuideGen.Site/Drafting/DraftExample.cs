using GuideGen.Guide.Inspection;
using GuideGen.Guide.Shapes;

namespace GuideGen.Site.Drafting;

/// <summary>What is written in a place, in one line.</summary>
static class DraftExample
{
    /// <summary>Good values.</summary>
    public static string Of(Outline outline) => With(outline, v => YamlText.Of(v.Example));

    /// <summary>The same form with a blank for every value: an example that is left in would pass for the truth.</summary>
    public static string Blank(Outline outline) => With(outline, _ => Blanks.Marker);

    static string With(Outline outline, Func<ValueOutline, string> write) => outline switch
    {
        ValueOutline value => write(value),
        ListOutline list => $"[{With(list.Item, write)}]",
        MapOutline map => $"{{ {With(map.Key, write)}: {With(map.Item, write)} }}",
        RecordOutline record => $"{{ {string.Join(", ", Keys(record).Select(f => $"{f.Key}: {With(f.Outline, write)}"))} }}",
        ChoiceOutline choice => With(choice.Ways[0], write),
        _ => throw new InvalidOperationException("an outline of another kind"),
    };

    static IEnumerable<IField> Keys(RecordOutline record) => record.Fields.Where(f => f.IsRequired).DefaultIfEmpty(record.Fields[0]);
}
