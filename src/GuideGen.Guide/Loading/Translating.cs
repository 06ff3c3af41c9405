using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Loading;

/// <summary>
/// Puts the words of a translation into the places of the original ones. Whatever is no wording (codes, numbers, names of
/// files) is said once, by the original, so that no edition of a guide can differ from another in a fact.
/// </summary>
sealed class Translating(FindingList findings, string original)
{
    public YamlNode Merge(YamlNode first, YamlNode own, Outline outline) => (outline, first, own) switch
    {
        (ValueOutline { IsWording: true }, _, YamlScalar) => own,
        (ListOutline { Item: ValueOutline { IsWording: true } }, _, YamlList) => own,
        (ListOutline list, YamlList a, YamlList b) when a.Items.Length == b.Items.Length => a with { Items = [.. a.Items.Zip(b.Items, (x, y) => Merge(x, y, list.Item))] },
        (MapOutline { Key: ValueOutline { IsWording: true } } map, YamlMap a, YamlMap b) when a.Entries.Length == b.Entries.Length =>
            a with { Entries = [.. a.Entries.Zip(b.Entries, (x, y) => new YamlEntry(y.Key, Merge(x.Value, y.Value, map.Item)))] },
        (MapOutline { Key: ValueOutline { IsWording: false } } map, YamlMap a, YamlMap b) => Keyed(a, b, _ => map.Item),
        (RecordOutline record, YamlMap a, YamlMap b) => Record(record.Fields, a, b),
        (ChoiceOutline choice, YamlMap a, YamlMap b) => Record([.. choice.Ways.SelectMany(w => w.Fields)], a, b),
        (_, YamlScalar a, YamlScalar b) when a.Value == b.Value => first,
        _ => Refuse(first, own),
    };

    YamlMap Record(ImmutableArray<IField> fields, YamlMap first, YamlMap own) => Keyed(first, own, key => fields.FirstOrDefault(f => f.Key == key)?.Outline);

    /// <param name="of">What stands under a key; null for one that nobody knows.</param>
    YamlMap Keyed(YamlMap first, YamlMap own, Func<string, Outline?> of)
    {
        var merged = first.Entries.Select(e => own.Find(e.Key.Value) is { } said && of(e.Key.Value) is { } outline ? new YamlEntry(said.Key, Merge(e.Value, said.Value, outline)) : e);
        var more = own.Entries.Where(e => first.Find(e.Key.Value) is null).ToLookup(e => IsWording(of(e.Key.Value)));
        findings.AddRange(more[false].Select(e => Rules.TranslationFact.At(e.Key.Span, original)));
        return first with { Entries = [.. merged, .. more[true]] };
    }

    /// <summary>The original need not have it: other words for a thing are many in one language and few in another.</summary>
    static bool IsWording(Outline? outline) => outline is ValueOutline { IsWording: true } or ListOutline { Item: ValueOutline { IsWording: true } };

    YamlNode Refuse(YamlNode first, YamlNode own)
    {
        findings.Add(Rules.TranslationFact.At(own.Span, original));
        return first;
    }
}
