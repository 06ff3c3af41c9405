using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Shapes;

/// <summary>
/// What an author may write in one place: it reads a node into a typed value or says what is wrong with it.
/// One description serves the loader, the messages, the schemas, the drafts and the help for writers.
/// </summary>
public abstract class Shape<T>
{
    /// <summary>What is expected here, as it completes 'expected …'.</summary>
    public abstract string Expected { get; }

    /// <summary>Several of them, as it completes 'a list of …'.</summary>
    public virtual string Several => Expected;

    public abstract Outline Outline { get; }

    /// <returns>False if the node has another shape; the context then holds a finding that says so.</returns>
    public abstract bool TryRead(YamlNode node, Binding binding, out T value);

    protected bool Refuse(YamlNode node, Binding binding, out T value)
    {
        binding.Findings.Add(Rules.ValueType.At(node.Span, Expected, Describe(node)));
        value = default!;
        return false;
    }

    static string Describe(YamlNode node) => node switch
    {
        YamlList { Items.IsEmpty: true } => "an empty list",
        YamlList => "a list",
        YamlMap { Entries: [] } => "no keys",
        YamlMap { Entries: [_] } => "one key with a value",
        YamlMap map => $"{map.Entries.Length} keys with values",
        YamlScalar { IsEmpty: true } => "nothing",
        YamlScalar scalar => $"'{Shorten(scalar.Value)}'",
        _ => throw new InvalidOperationException("a node is a scalar, a list or a map"),
    };

    static string Shorten(string text) => text.Length <= 40 ? text : text[..39] + "…";
}

/// <summary>What a shape may write to while it reads: findings, and the names it refers to.</summary>
public sealed class Binding(Model.PageOrigin origin, FindingList findings, List<Model.Reference> references)
{
    public Model.PageOrigin Origin { get; } = origin;

    public FindingList Findings { get; } = findings;

    public void Refer(Model.NameKind kind, Located<string> name) => references.Add(new Model.Reference(kind, name));
}
