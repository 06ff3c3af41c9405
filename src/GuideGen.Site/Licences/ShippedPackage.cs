using System.Collections.Immutable;
using System.Reflection;
using System.Xml.Linq;

namespace GuideGen.Site.Licences;

/// <summary>A package of others that an assembly is built on, as the package's own manifest (<c>.nuspec</c>) tells of it.</summary>
/// <param name="Licence">The identifier of its licence in the SPDX licence list.</param>
/// <param name="Holder">Who holds the copyright, in the package's own words; its authors where it has none.</param>
public sealed record ShippedPackage(string Name, string Version, string Licence, string Holder, Uri Address)
{
    const string Prefix = "packages/";

    /// <summary>The packages that the build of an assembly took in, in order of their names.</summary>
    /// <param name="assembly">Built with <c>src/Licences.targets</c>.</param>
    public static ImmutableArray<ShippedPackage> Of(Assembly assembly) =>
    [
        .. assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => Read(XDocument.Load(assembly.GetManifestResourceStream(n)!)))
            .OrderBy(p => p.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <param name="manifest">In the form of any of the years of nuspec.xsd, which differ by their namespaces only.</param>
    /// <exception cref="InvalidDataException">The manifest does not say what it is, or under which licence it may be passed on.</exception>
    public static ShippedPackage Read(XDocument manifest)
    {
        return new ShippedPackage(Need("id"), Need("version"), Licence(), Tell("copyright") ?? Need("authors"), new Uri(Need("projectUrl")));

        XElement? Find(string name) => manifest.Root!.Elements().First().Elements().FirstOrDefault(e => e.Name.LocalName == name);

        string? Tell(string name) => Find(name)?.Value.Trim() is { Length: > 0 } text ? text : null;

        string Need(string name) => Tell(name) ?? throw new InvalidDataException($"a package does not tell its {name}: {manifest}");

        string Licence() => Find("license") is { } told && told.Attribute("type")?.Value == "expression"
            ? told.Value.Trim()
            : throw new InvalidDataException($"{Need("id")} names no licence of the SPDX list: read its terms before it is taken in");
    }
}
