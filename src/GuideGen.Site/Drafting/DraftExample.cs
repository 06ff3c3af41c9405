using GuideGen.Guide.Shapes;

namespace GuideGen.Site.Drafting;

/// <summary>What a good value looks like, in one line.</summary>
static class DraftExample
{
    public static string Of(Outline outline) => outline switch
    {
        ValueOutline value => YamlText.Of(value.Example),
        ListOutline list => $"[{Of(list.Item)}]",
        MapOutline map => $"{{ {Of(map.Key)}: {Of(map.Item)} }}",
        RecordOutline record => $"{{ {string.Join(", ", Keys(record).Select(f => $"{f.Key}: {Of(f.Outline)}"))} }}",
        ChoiceOutline choice => Of(choice.Ways[0]),
        _ => throw new InvalidOperationException("an outline of another kind"),
    };

    static IEnumerable<IField> Keys(RecordOutline record) => record.Fields.Where(f => f.IsRequired).DefaultIfEmpty(record.Fields[0]);
}
