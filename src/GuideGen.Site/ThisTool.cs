using System.Collections.Immutable;
using System.Globalization;
using AngleSharp;
using Ganss.Xss;
using GuideGen.Codes;
using GuideGen.Diagnosis;
using GuideGen.Guide.Text;
using GuideGen.Search;
using Markdig;
using Scriban;
using SkiaSharp;
using UnitsNet;
using YamlDotNet.Core;

namespace GuideGen.Site;

/// <summary>Tells this build of the tool from every other that could make other files of the same guide.</summary>
static class ThisTool
{
    /// <summary>A type of each module that has a hand in the files; a compiler gives each content of a module an identity of its own (ECMA-335, II.22.30).</summary>
    internal static readonly ImmutableArray<Type> Hands =
    [
        typeof(TroubleCode), typeof(Digest), typeof(LikelihoodRow), typeof(LunrScript), typeof(ThisTool),
        typeof(Markdown), typeof(Template), typeof(Parser), typeof(IBrowsingContext), typeof(HtmlSanitizer),
        typeof(SKBitmap), typeof(IQuantity), typeof(object), typeof(Uri),
    ];

    public static Digest Digest { get; } = Identity();

    static Digest Identity()
    {
        using var all = new Digester();
        foreach (var type in Hands) all.Add(type.Module.ModuleVersionId.ToByteArray());
        // Numbers, days and the order of names come from the system's tables of languages.
        var order = CultureInfo.InvariantCulture.CompareInfo.Version;
        return all.Add(order.SortId.ToByteArray()).Add(order.FullVersion.ToString(CultureInfo.InvariantCulture)).Take();
    }
}
