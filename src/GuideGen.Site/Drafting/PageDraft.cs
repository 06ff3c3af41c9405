using System.Collections.Frozen;
using System.Text;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;

namespace GuideGen.Site.Drafting;

/// <summary>A new page with a comment on every key and a blank wherever its author has to write; inspection finds the blanks.</summary>
/// <remarks>All of it follows from the shapes and the plan of sections, so that a draft asks for what the loader reads.</remarks>
public sealed class PageDraft
{
    static readonly string[] Names = ["first", "second", "third"];

    /// <summary>What an editor shows without moving sideways.</summary>
    const int Width = 110;

    readonly ContentKind kind;
    readonly FrozenDictionary<string, string> answers;
    readonly GuideContent guide;
    readonly StringBuilder text = new();

    PageDraft(ContentKind kind, IReadOnlyDictionary<string, string> answers, GuideContent guide)
    {
        this.guide = guide;
        this.kind = kind;
        this.answers = answers.ToFrozenDictionary();
    }

    /// <summary>The keys that hold one value each and have to be there: what is worth asking for.</summary>
    public static IEnumerable<IField> Questions(ContentKind kind) => GuideShapes.Of(kind).Fields.Where(f => f.IsRequired && f.Outline is ValueOutline);

    /// <summary>The keys as a draft lists them: first what has to be filled.</summary>
    public static IEnumerable<IField> InOrder(ContentKind kind, RecordOutline record) => record.Fields.OrderByDescending(f => IsAsked(kind, f));

    /// <summary>What a writer has to know to fill a key, in lines of any length.</summary>
    public static IEnumerable<string> Advice(IField field, GuideContent guide) =>
    [
        $"{field.Help} Write {field.Expected}.",
        .. NamesToUse.Of(field.Outline, guide).Select(n => n.AreFiles ? $"Names to use: those of the files in {n}, without their ending." : $"Names to use: {n}."),
        .. NamesToUse.NotesOn(field.Outline),
    ];

    /// <param name="answers">By key; a key without an answer becomes a blank.</param>
    /// <param name="guide">Says which names its author may use.</param>
    public static string Write(ContentKind kind, IReadOnlyDictionary<string, string> answers, GuideContent guide)
    {
        var draft = new PageDraft(kind, answers, guide);
        if (NameKinds.Ending(kind) == ".md") draft.WritePage();
        else draft.WriteStructure();
        return draft.text.ToString();
    }

    void WritePage()
    {
        Line("---");
        WriteStructure();
        Line("---");
        foreach (var section in SectionPlan.Of(kind))
        {
            Line($"## {section.Title}");
            Line($"{Blanks.Marker} {section.Help}");
            Line("");
        }

        text.Length--;
    }

    void WriteStructure()
    {
        Line($"# yaml-language-server: $schema=../../.schemas/{NameKinds.Word(kind)}.json");
        Line("# Fill every blank of underscores, and take the # off the keys you need.");
        Line("# The command 'inspect' says what is left.");
        WriteFields(GuideShapes.Of(kind), "");
    }

    void WriteFields(RecordOutline record, string indent)
    {
        // Keys that may all be left out still have to say something together, so the first one is asked.
        var asked = record.Fields.Where(f => IsAsked(kind, f)).DefaultIfEmpty(record.Fields[0]).ToList();
        foreach (var field in asked) WriteField(field, indent);
        foreach (var field in record.Fields.Except(asked))
        {
            Comment(field, indent);
            Line($"{indent}# {field.Key}: {DraftExample.Blank(field.Outline)}");
        }
    }

    /// <summary>Most new trees have their steps written out, though the tool can build them as well.</summary>
    static bool IsAsked(ContentKind kind, IField field) => field.IsRequired || (kind is ContentKind.Tree && field.Key is "start" or "nodes");

    void WriteField(IField field, string indent)
    {
        Comment(field, indent);
        if (field.Key == "start")
        {
            Line($"start: {StepsDraft.First}");
        }
        else if (indent.Length == 0 && answers.TryGetValue(field.Key, out var answer))
        {
            Line($"{field.Key}: {YamlText.Of(answer)}");
        }
        else if (field.Outline is ValueOutline)
        {
            Line($"{indent}{field.Key}: {Blanks.Marker}");
        }
        else
        {
            Line($"{indent}{field.Key}:");
            WriteInner(field.Outline, indent + "  ");
        }
    }

    void WriteInner(Outline outline, string indent)
    {
        switch (outline)
        {
            case MapOutline { Item: ChoiceOutline choice }:
                new StepsDraft(choice, (line) => Line(indent + line)).Write();
                break;
            case MapOutline map:
                WriteEntries(map, indent);
                break;
            case RecordOutline record:
                WriteFields(record, indent);
                break;
            default:
                Line($"{indent}- {Blanks.Marker}");
                break;
        }
    }

    /// <summary>Keys that the author makes up get names that can stay; keys that name something else are blanks.</summary>
    void WriteEntries(MapOutline map, string indent)
    {
        foreach (var name in Names.Take(Math.Max(1, map.Fewest)))
        {
            var key = map.Fewest > 1 ? name : Blanks.Marker;
            if (map.Item is RecordOutline record)
            {
                Line($"{indent}{key}:");
                WriteFields(record, indent + "  ");
            }
            else
            {
                Line($"{indent}{key}: {Blanks.Marker}");
            }
        }
    }

    void Comment(IField field, string indent)
    {
        foreach (var line in Advice(field, guide)) Wrapped(line, indent);
        if (field.Outline is MapOutline { Item: ValueOutline }) Wrapped($"Such as: {DraftExample.Of(field.Outline)}", indent);
    }

    /// <summary>A comment of several lines stands further in from the second one on.</summary>
    void Wrapped(string comment, string indent)
    {
        var line = $"{indent}#";
        foreach (var word in comment.Split(' '))
        {
            if (line.Length + word.Length >= Width)
            {
                Line(line);
                line = $"{indent}#  ";
            }

            line += ' ' + word;
        }

        Line(line);
    }

    void Line(string line) => text.Append(line.TrimEnd()).Append('\n');
}
