using GuideGen.Guide.Findings;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Shapes;

/// <summary>One key of a record: what it holds and what it is for.</summary>
public interface IField
{
    string Key { get; }

    string Expected { get; }

    bool IsRequired { get; }

    /// <summary>True for what every kind of page may say of itself; writers find it behind the keys of their kind.</summary>
    bool IsOfEveryPage { get; }

    Outline Outline { get; }

    /// <summary>One line for writers.</summary>
    string Help { get; }

    /// <summary>Reads the node into the slot of this field.</summary>
    bool TryRead(YamlNode node, Binding binding, RecordValues values);

    void UseFallback(RecordValues values);
}

public sealed class Field<T>(int index, string key, Shape<T> shape, string help) : IField
{
    internal int Index { get; } = index;

    public string Key { get; } = key;

    public string Help { get; } = help;

    public string Expected => shape.Expected;

    public Outline Outline => shape.Outline;

    public bool IsRequired { get; internal init; } = true;

    public bool IsOfEveryPage { get; internal init; }

    internal T? Fallback { get; init; }

    public bool TryRead(YamlNode node, Binding binding, RecordValues values)
    {
        if (!shape.TryRead(node, binding, out var value)) return false;
        values.Slots[Index] = value;
        return true;
    }

    public void UseFallback(RecordValues values) => values.Slots[Index] = Fallback;
}

/// <summary>What was read for the fields of one record.</summary>
public sealed class RecordValues(int count, YamlMap map, Model.PageOrigin origin)
{
    internal object?[] Slots { get; } = new object?[count];

    public YamlMap Map { get; } = map;

    public Model.PageOrigin Origin { get; } = origin;

    public T Get<T>(Field<T> field) => (T)Slots[field.Index]!;
}

/// <summary>Keys with values of known shapes: unknown, missing and empty keys are findings with the nearest right name.</summary>
public abstract class RecordShape<T> : Shape<T>
{
    readonly List<IField> fields = [];
    readonly Dictionary<string, int> places = new(StringComparer.Ordinal);

    public IReadOnlyList<IField> Fields => fields;

    public override string Expected => "keys with values";

    public override Outline Outline => new RecordOutline(Expected, [.. fields.OrderBy(f => f.IsOfEveryPage).ThenByDescending(f => f.IsRequired)], Conditions);

    /// <summary>What <see cref="TryRead"/> of a derived shape asks of several keys together, as a list of JSON Schemas.</summary>
    protected virtual string Conditions => "";

    protected Field<TValue> Required<TValue>(string key, Shape<TValue> shape, string help) =>
        Add(new Field<TValue>(fields.Count, key, shape, help));

    protected Field<TValue> Optional<TValue>(string key, Shape<TValue> shape, TValue fallback, string help) =>
        Add(new Field<TValue>(fields.Count, key, shape, help) { IsRequired = false, Fallback = fallback });

    /// <summary>An optional field that every kind of page has.</summary>
    protected Field<TValue> OfEveryPage<TValue>(string key, Shape<TValue> shape, TValue fallback, string help) =>
        Add(new Field<TValue>(fields.Count, key, shape, help) { IsRequired = false, IsOfEveryPage = true, Fallback = fallback });

    /// <summary>All fields are read, or hold their fallback.</summary>
    protected abstract T Make(RecordValues values);

    public override bool TryRead(YamlNode node, Binding binding, out T value)
    {
        if (node is not YamlMap map) return Refuse(node, binding, out value);
        var values = new RecordValues(fields.Count, map, binding.Origin);
        var (known, unknown) = Sorted(map);
        var misspelt = unknown.Count == 0 ? [] : ReportUnknownKeys(unknown, known, binding);
        var isWhole = true;
        for (var i = 0; i < known.Length; i++) isWhole &= known[i] is { } entry ? ReadField(fields[i], entry, binding, values) : LeaveOut(fields[i], misspelt, binding, values);
        value = isWhole ? Make(values) : default!;
        return isWhole;
    }

    Field<TValue> Add<TValue>(Field<TValue> field)
    {
        places.Add(field.Key, fields.Count);
        fields.Add(field);
        return field;
    }

    /// <returns>The entry of each field, and the keys that are none.</returns>
    (YamlEntry?[] Known, List<YamlScalar> Unknown) Sorted(YamlMap map)
    {
        var known = new YamlEntry?[fields.Count];
        var unknown = new List<YamlScalar>();
        foreach (var entry in map.Entries)
        {
            if (places.TryGetValue(entry.Key.Value, out var place)) known[place] ??= entry;
            else unknown.Add(entry.Key);
        }

        return (known, unknown);
    }

    /// <returns>The keys that were most likely meant, so that none of them is called missing as well.</returns>
    HashSet<string?> ReportUnknownKeys(List<YamlScalar> unknown, YamlEntry?[] known, Binding binding)
    {
        var free = fields.Where((_, i) => known[i] is null).Select(f => f.Key).ToList();
        binding.Findings.AddRange(unknown.Select(k => Rules.KeyUnknown.At(k.Span, k.Value, NearestName.Question(k.Value, free))));
        return unknown.Select(k => NearestName.To(k.Value, free)).ToHashSet();
    }

    static bool LeaveOut(IField field, HashSet<string?> misspelt, Binding binding, RecordValues values)
    {
        field.UseFallback(values);
        if (field.IsRequired && !misspelt.Contains(field.Key))
        {
            binding.Findings.Add(Rules.KeyMissing.At(values.Map.Span with { Length = 0 }, field.Key, field.Expected));
        }

        return !field.IsRequired;
    }

    static bool ReadField(IField field, YamlEntry entry, Binding binding, RecordValues values)
    {
        field.UseFallback(values);
        if (entry.Value is not YamlScalar { IsEmpty: true })
        {
            // A wrong optional value is a finding already; its fallback keeps the rest of the page inspectable.
            return field.TryRead(entry.Value, binding, values) || !field.IsRequired;
        }

        binding.Findings.Add(Rules.ValueEmpty.At(entry.Key.Span, field.Key, field.Expected));
        return !field.IsRequired;
    }
}
