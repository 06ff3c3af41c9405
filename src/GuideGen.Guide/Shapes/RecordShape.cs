using GuideGen.Guide.Findings;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Shapes;

/// <summary>One key of a record: what it holds and what it is for.</summary>
public interface IField
{
    string Key { get; }

    string Expected { get; }

    bool IsRequired { get; }

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

    public bool IsRequired { get; internal init; } = true;

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

    public IReadOnlyList<IField> Fields => fields;

    public override string Expected => "keys with values";

    protected Field<TValue> Required<TValue>(string key, Shape<TValue> shape, string help) =>
        Add(new Field<TValue>(fields.Count, key, shape, help));

    protected Field<TValue> Optional<TValue>(string key, Shape<TValue> shape, TValue fallback, string help) =>
        Add(new Field<TValue>(fields.Count, key, shape, help) { IsRequired = false, Fallback = fallback });

    /// <summary>All fields are read, or hold their fallback.</summary>
    protected abstract T Make(RecordValues values);

    public override bool TryRead(YamlNode node, Binding binding, out T value)
    {
        if (node is not YamlMap map) return Refuse(node, binding, out value);
        var values = new RecordValues(fields.Count, map, binding.Origin);
        ReportUnknownKeys(map, binding);
        var isWhole = true;
        foreach (var field in fields) isWhole &= ReadField(field, map, binding, values);
        value = isWhole ? Make(values) : default!;
        return isWhole;
    }

    Field<TValue> Add<TValue>(Field<TValue> field)
    {
        fields.Add(field);
        return field;
    }

    void ReportUnknownKeys(YamlMap map, Binding binding)
    {
        var known = fields.ConvertAll(f => f.Key);
        foreach (var (key, _) in map.Entries.Where(e => !known.Contains(e.Key.Value)))
        {
            var free = known.Where(k => map.Find(k) is null);
            binding.Findings.Add(Rules.KeyUnknown.At(key.Span, key.Value, NearestName.Question(key.Value, free)));
        }
    }

    static bool ReadField(IField field, YamlMap map, Binding binding, RecordValues values)
    {
        field.UseFallback(values);
        var entry = map.Find(field.Key);
        if (entry is null)
        {
            if (!field.IsRequired) return true;
            binding.Findings.Add(Rules.KeyMissing.At(map.Span with { Length = 0 }, field.Key, field.Expected));
            return false;
        }

        if (entry.Value is not YamlScalar { IsEmpty: true })
        {
            // A wrong optional value is a finding already; its fallback keeps the rest of the page inspectable.
            return field.TryRead(entry.Value, binding, values) || !field.IsRequired;
        }

        binding.Findings.Add(Rules.ValueEmpty.At(entry.Key.Span, field.Key, field.Expected));
        return !field.IsRequired;
    }
}
