namespace GuideGen.Guide.Yaml;

/// <summary>How large structured text may grow before it is refused: far above any honest page.</summary>
public static class YamlLimits
{
    public const int Depth = 16;

    public const int Nodes = 50_000;
}
