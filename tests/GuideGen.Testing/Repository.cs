using System.Reflection;

namespace GuideGen.Testing;

/// <summary>Where the files of this repository lie while its tests run.</summary>
public static class Repository
{
    public static string Root { get; } = Said("RepositoryRoot");

    public static string PathTo(params string[] parts) => Path.Combine([Root, .. parts]);

    public static string Read(params string[] parts) => File.ReadAllText(PathTo(parts));

    /// <summary>What the build was told under a name.</summary>
    public static string Said(string name) => typeof(Repository).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>()
        .Single(a => a.Key == name).Value ?? "";
}
