using GuideGen.Guide.Text;

namespace GuideGen.Guide.Model;

/// <summary>The kinds of file a guide is made of.</summary>
public enum ContentKind
{
    Fault,
    Check,
    Symptom,
    Part,
    Task,
    Code,
    Tree,
    Case,
}

/// <summary>Everything that one file may name in another.</summary>
public enum NameKind
{
    Fault,
    Check,
    Symptom,
    Part,
    Task,
    Tree,
    Variant,
    System,
    Setup,
    Hazard,
}

/// <summary>A name as it was used: where, and what kind of thing it should be.</summary>
public sealed record Reference(NameKind Kind, Located<string> Name);

public static class NameKinds
{
    public static string Word(NameKind kind) => kind switch
    {
        NameKind.Fault => "fault",
        NameKind.Check => "check",
        NameKind.Symptom => "symptom",
        NameKind.Part => "part",
        NameKind.Task => "task",
        NameKind.Tree => "tree",
        NameKind.Variant => "variant",
        NameKind.System => "system",
        NameKind.Setup => "set-up",
        NameKind.Hazard => "hazard",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>What a file of the kind is called in a message.</summary>
    public static string Word(ContentKind kind) => kind switch
    {
        ContentKind.Fault => "fault",
        ContentKind.Check => "check",
        ContentKind.Symptom => "symptom",
        ContentKind.Part => "part",
        ContentKind.Task => "task",
        ContentKind.Code => "code",
        ContentKind.Tree => "tree",
        ContentKind.Case => "case",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    public static string Folder(ContentKind kind) => kind switch
    {
        ContentKind.Fault => "faults",
        ContentKind.Check => "checks",
        ContentKind.Symptom => "symptoms",
        ContentKind.Part => "parts",
        ContentKind.Task => "tasks",
        ContentKind.Code => "codes",
        ContentKind.Tree => "trees",
        ContentKind.Case => "cases",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Trees and cases are structured text throughout; all other kinds are pages with front matter.</summary>
    public static string Ending(ContentKind kind) => kind is ContentKind.Tree or ContentKind.Case ? ".yml" : ".md";
}
