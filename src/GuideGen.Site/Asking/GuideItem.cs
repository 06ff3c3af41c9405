using GuideGen.Guide.Model;

namespace GuideGen.Site.Asking;

/// <summary>
/// Names of what a page can ask a guide for beside its own text. A name is a kind up to and with the slash, and behind it a slug or a
/// code; without one it is all of the kind.
/// </summary>
static class GuideItem
{
    public const string FaultsByCode = "faults-by-code/";
    public const string FaultsBySymptom = "faults-by-symptom/";
    public const string FaultsByPart = "faults-by-part/";
    public const string FaultsByCheck = "faults-by-check/";
    public const string ChecksByPart = "checks-by-part/";
    public const string TreesBySymptom = "trees-by-symptom/";
    public const string TreesByCheck = "trees-by-check/";
    public const string TreesByFault = "trees-by-fault/";
    public const string CasesByFault = "cases-by-fault/";

    /// <summary>What the cases say of a code.</summary>
    public const string EvidenceOfCode = "evidence-of-code/";

    /// <summary>What the cases say of a symptom.</summary>
    public const string EvidenceOfSymptom = "evidence-of-symptom/";

    /// <summary>What a walk takes, see <see cref="Trees.TreeFigures"/>.</summary>
    public const string FiguresOfTree = "figures-of-tree/";

    /// <summary>What opinions and cases come to in numbers.</summary>
    public const string Weights = "weights/";

    /// <summary>All entries of a kind.</summary>
    public static string All(ContentKind kind) => NameKinds.Folder(kind) + "/";

    public static string Of(IGuideEntry entry) => All(entry.Origin.Kind!.Value) + entry.Origin.Slug;

    /// <summary>The kind of an item: all of its name up to and with the slash.</summary>
    public static ReadOnlySpan<char> KindOf(ReadOnlySpan<char> item) => item[..(item.IndexOf('/') + 1)];
}
