using System.Collections.Immutable;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Shapes;

/// <summary>A list; items that cannot be read are findings and left out.</summary>
public sealed class ListShape<T>(Shape<T> item, int fewest) : Shape<ImmutableArray<T>>
{
    public override string Expected => $"a list of {item.Several}" + (fewest > 0 ? $", at least {fewest}" : "");

    public override Outline Outline => new ListOutline(Expected, item.Outline, fewest);

    public override bool TryRead(YamlNode node, Binding binding, out ImmutableArray<T> value)
    {
        if (node is not YamlList list || list.Items.Length < fewest) return Refuse(node, binding, out value);
        var read = ImmutableArray.CreateBuilder<T>(list.Items.Length);
        foreach (var child in list.Items)
        {
            if (item.TryRead(child, binding, out var inner)) read.Add(inner);
        }

        value = read.ToImmutable();
        return true;
    }
}

/// <summary>Free keys, all with values of one shape, in the order they were written.</summary>
/// <param name="isNaming">
/// True where the keys name something that is told elsewhere: an entry that cannot be read is left out. Otherwise it spoils
/// the map, since everything that refers to it would become a finding of its own.
/// </param>
public sealed class MapShape<TKey, TValue>(Shape<TKey> key, Shape<TValue> item, int fewest, bool isNaming) : Shape<ImmutableArray<KeyValuePair<TKey, TValue>>>
{
    public override string Expected => (fewest > 1 ? $"at least {fewest} " : "") + $"keys with values, each {key.Expected} with {item.Expected}";

    public override Outline Outline => new MapOutline(Expected, key.Outline, item.Outline, fewest);

    public override bool TryRead(YamlNode node, Binding binding, out ImmutableArray<KeyValuePair<TKey, TValue>> value)
    {
        if (node is not YamlMap map || map.Entries.Length < fewest) return Refuse(node, binding, out value);
        var read = ImmutableArray.CreateBuilder<KeyValuePair<TKey, TValue>>(map.Entries.Length);
        var isWhole = true;
        foreach (var entry in map.Entries)
        {
            var isRead = key.TryRead(entry.Key, binding, out var name) & item.TryRead(entry.Value, binding, out var inner);
            isWhole &= isRead;
            if (isRead) read.Add(new KeyValuePair<TKey, TValue>(name, inner));
        }

        value = read.ToImmutable();
        return isWhole || isNaming;
    }
}

/// <summary>Rows of exactly three numbers: x, low, high; x rises, low is not above high.</summary>
public sealed class LimitTableShape : Shape<ImmutableArray<Model.LimitRow>>
{
    public override string Expected => "rows of [x, low, high] with rising x and low not above high";

    public override Outline Outline => new ListOutline(Expected, Row, 2);

    static ValueOutline Row { get; } = new(
        "[x, low, high]", """{ "type": "array", "items": { "type": "number" }, "minItems": 3, "maxItems": 3 }""", "[20, 2.2, 2.8]");

    public override bool TryRead(YamlNode node, Binding binding, out ImmutableArray<Model.LimitRow> value)
    {
        if (node is not YamlList { Items.Length: >= 2 } list) return Refuse(node, binding, out value);
        var rows = ImmutableArray.CreateBuilder<Model.LimitRow>();
        foreach (var item in list.Items)
        {
            var row = ReadRow(item);
            var rises = row is not null && (rows.Count == 0 || rows[^1].X < row.X);
            if (!rises) return Refuse(item, binding, out value);
            rows.Add(row!);
        }

        value = rows.ToImmutable();
        return true;
    }

    static Model.LimitRow? ReadRow(YamlNode node)
    {
        if (node is not YamlList { Items: [YamlScalar x, YamlScalar low, YamlScalar high] }) return null;
        var isRead = Scalars.TryNumber(x.Value, out var at) & Scalars.TryNumber(low.Value, out var from) & Scalars.TryNumber(high.Value, out var to);
        return isRead && from <= to ? new Model.LimitRow(at, from, to, node.Span) : null;
    }
}

public static class Collections
{
    public static Shape<ImmutableArray<T>> ListOf<T>(Shape<T> item, int fewest = 0) => new ListShape<T>(item, fewest);

    public static Shape<ImmutableArray<KeyValuePair<TKey, TValue>>> MapOf<TKey, TValue>(Shape<TKey> key, Shape<TValue> item, int fewest = 0) =>
        new MapShape<TKey, TValue>(key, item, fewest, isNaming: false);

    /// <summary>Codes, symptoms and checks with what is said of each.</summary>
    public static Shape<ImmutableArray<KeyValuePair<TKey, TValue>>> NamedOf<TKey, TValue>(Shape<TKey> key, Shape<TValue> item, int fewest = 0) =>
        new MapShape<TKey, TValue>(key, item, fewest, isNaming: true);

    public static Shape<ImmutableArray<Located<string>>> Texts { get; } = ListOf(Scalars.Text);

    public static Shape<ImmutableArray<Located<string>>> Names(Model.NameKind kind) => ListOf(Scalars.Name(kind));
}
