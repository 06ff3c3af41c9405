using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Tests.Schemas;

/// <summary>A front matter or structured file as the loader and an editor see it.</summary>
sealed partial record Sample(string Name, string Kind, string Yaml, JsonNode? Json)
{
    public override string ToString() => Name;

    /// <summary>An unquoted scalar becomes what the core schema of YAML 1.2.2, chapter 10.3, makes of it.</summary>
    public static Sample Of(string name, string path, string text)
    {
        var source = new SourceText(path, text);
        var yaml = FrontMatter.Find(source, new FindingList()) is { } front && path.EndsWith(".md", StringComparison.Ordinal)
            ? text.Substring(front.Start, front.Length)
            : text;
        var root = YamlReader.Read(new SourceText(path, yaml), new FindingList());
        return new Sample(name, KindOf(path), yaml, root is null ? null : Convert(root));
    }

    /// <summary>JSON is YAML 1.2, so both sides can read the same text.</summary>
    public static Sample Of(string name, string kind, JsonNode json) => new(name, kind, json.ToJsonString(), json);

    /// <summary>What the loader objects to in the shape of the file.</summary>
    public ImmutableArray<Finding> Objections()
    {
        var findings = new FindingList();
        var source = new SourceText("sample", Yaml);
        var slug = Kind == "code" ? "P1A42" : "sample";
        var binding = new Binding(new PageOrigin(null, slug, source, PageBody.Empty), findings, []);
        if (YamlReader.Read(source, findings) is { } root) Read(root, binding);
        return findings.ToSorted();
    }

    /// <summary>Empty or unknown for a file that belongs to no kind.</summary>
    static string KindOf(string path) => path.Split('/') is ["content", var folder, _]
        ? Enum.GetValues<ContentKind>().Where(k => NameKinds.Folder(k) == folder).Select(NameKinds.Word).FirstOrDefault("")
        : Path.GetFileNameWithoutExtension(path);

    bool Read(YamlNode root, Binding binding) => Kind switch
    {
        "fault" => GuideShapes.Fault.TryRead(root, binding, out _),
        "check" => GuideShapes.Check.TryRead(root, binding, out _),
        "symptom" => GuideShapes.Symptom.TryRead(root, binding, out _),
        "part" => GuideShapes.Part.TryRead(root, binding, out _),
        "task" => GuideShapes.Task.TryRead(root, binding, out _),
        "code" => GuideShapes.Code.TryRead(root, binding, out _),
        "tree" => GuideShapes.Tree.TryRead(root, binding, out _),
        "case" => GuideShapes.Case.TryRead(root, binding, out _),
        "site-config" => GuideShapes.Settings.TryRead(root, binding, out _),
        "vehicle" => GuideShapes.Vehicle.TryRead(root, binding, out _),
        "hazards" => GuideShapes.Hazards.TryRead(root, binding, out _),
        "terms" => GuideShapes.Terms.TryRead(root, binding, out _),
        _ => throw new InvalidOperationException($"no shape reads {Kind}"),
    };

    static JsonNode? Convert(YamlNode node) => node switch
    {
        YamlMap map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key.Value, Convert(e.Value)))),
        YamlList list => new JsonArray([.. list.Items.Select(Convert)]),
        YamlScalar { IsEmpty: true } => null,
        YamlScalar { IsQuoted: false, Value: "true" or "false" } flag => JsonValue.Create(flag.Value == "true"),
        YamlScalar { IsQuoted: false } plain when Number().IsMatch(plain.Value) => JsonValue.Create(double.Parse(plain.Value, CultureInfo.InvariantCulture)),
        YamlScalar scalar => JsonValue.Create(scalar.Value),
        _ => throw new InvalidOperationException("a node is a scalar, a list or a map"),
    };

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex Number();
}
