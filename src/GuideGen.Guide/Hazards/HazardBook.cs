using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Hazards;

/// <summary>The hazards every guide knows. They lie in a file of the same form as a guide's own.</summary>
public static class HazardBook
{
    internal static Shape<ImmutableArray<KeyValuePair<Located<string>, Hazard>>> Shape { get; } =
        Collections.MapOf(Scalars.Key, new HazardShape());

    /// <summary>By slug. The list follows common practice in workshops; each row's basis stands in the file.</summary>
    public static FrozenDictionary<string, Hazard> BuiltIn { get; } = ReadBuiltIn();

    static FrozenDictionary<string, Hazard> ReadBuiltIn()
    {
        using var stream = typeof(HazardBook).Assembly.GetManifestResourceStream("hazards.yml")!;
        using var reader = new StreamReader(stream);
        var source = new SourceText("hazards.yml", reader.ReadToEnd());
        var findings = new FindingList();
        var binding = new Binding(new PageOrigin(null, "hazards", source, Pages.PageBody.Empty), findings, []);
        var root = YamlReader.Read(source, findings);
        if (root is null || !Shape.TryRead(root, binding, out var hazards) || findings.ToSorted().Length > 0)
        {
            throw new InvalidOperationException("the built-in hazards cannot be read: " + string.Join("; ", findings.ToSorted().Select(f => f.Message)));
        }

        return hazards.ToFrozenDictionary(h => h.Key.Value, h => h.Value);
    }
}
