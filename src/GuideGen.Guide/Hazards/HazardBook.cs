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
    public static FrozenDictionary<string, Hazard> BuiltIn { get; } = Read("hazards.yml");

    static readonly Lazy<FrozenDictionary<string, Hazard>> German = new(() => Read("hazards.de.yml"));

    /// <summary>The same hazards in the language of a guide; English where there is none.</summary>
    /// <param name="language">Language tag (BCP 47).</param>
    public static FrozenDictionary<string, Hazard> In(string language) => language.Split('-')[0] == "de" ? German.Value : BuiltIn;

    static FrozenDictionary<string, Hazard> Read(string name)
    {
        using var stream = typeof(HazardBook).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        var source = new SourceText(name, reader.ReadToEnd());
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
