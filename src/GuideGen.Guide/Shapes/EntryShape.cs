using System.Collections.Immutable;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Shapes;

/// <summary>The fields that every kind of entry shares.</summary>
public abstract class EntryShape<T> : RecordShape<T>
{
    protected EntryShape()
    {
        Name = Required("name", Scalars.Text, "What it is called, as an owner would say it.");
        Summary = Required("summary", Scalars.Text, "One or two sentences, shown wherever the page is listed.");
        Variants = Optional("variants", Collections.Names(NameKind.Variant), [], "The variants it applies to; leave it out for all.");
        Dismissals = OfEveryPage("dismiss", Collections.ListOf(new DismissalShape()), [], "Findings that do not hold on this page, each with a reason.");
        Reviewed = OfEveryPage("reviewed", Maybe.Of(Scalars.Date), null, "The day somebody who knows last read it through.");
        ReviewedBy = OfEveryPage("reviewed-by", Maybe.Of(Scalars.Text), null, "Who read it through, as they want to be called.");
        ReviewedOn = OfEveryPage("reviewed-on", Collections.Names(NameKind.Variant), [], "The variants it was compared with when it was read through.");
        Sources = OfEveryPage("sources", Collections.Texts, [], "What the page rests on.");
        Formerly = OfEveryPage("formerly", Collections.Texts, [], "Old addresses of this page, such as faults/old-name.html.");
    }

    protected Field<Located<string>> Name { get; }

    protected Field<Located<string>> Summary { get; }

    protected Field<ImmutableArray<Located<string>>> Variants { get; }

    protected Field<ImmutableArray<Dismissal>> Dismissals { get; }

    Field<Located<DateOnly>?> Reviewed { get; }

    Field<Located<string>?> ReviewedBy { get; }

    Field<ImmutableArray<Located<string>>> ReviewedOn { get; }

    Field<ImmutableArray<Located<string>>> Sources { get; }

    Field<ImmutableArray<Located<string>>> Formerly { get; }

    protected Provenance ProvenanceOf(RecordValues values) => new(values.Get(Reviewed), values.Get(Sources), values.Get(Formerly))
    {
        ReviewedBy = values.Get(ReviewedBy),
        ReviewedOn = values.Get(ReviewedOn),
    };
}

/// <summary>The fields of entries in which somebody puts a hand to the vehicle.</summary>
public abstract class HandsOnShape<T> : EntryShape<T>
{
    protected HandsOnShape()
    {
        Hazards = Optional("hazards", Collections.Names(NameKind.Hazard), [], "What can hurt someone doing this; the Safety section has to name each.");
        Parts = Optional("parts", Collections.Names(NameKind.Part), [], "The parts this is about.");
    }

    protected Field<ImmutableArray<Located<string>>> Hazards { get; }

    protected Field<ImmutableArray<Located<string>>> Parts { get; }

    protected Field<ImmutableArray<Located<string>>> ToolsField() =>
        Optional("tools", Collections.Texts, [], "Tools needed, one per line.");
}

sealed class DismissalShape : RecordShape<Dismissal>
{
    readonly Field<Located<string>> rule;
    readonly Field<Located<string>?> about;
    readonly Field<Located<string>> reason;

    public DismissalShape()
    {
        rule = Required("rule", Scalars.Mark, "The rule's name, as the finding shows it.");
        about = Optional("about", Maybe.Of(Scalars.Mark), null, "The hazard, code or name the finding is about; leave it out for all.");
        reason = Required("reason", Scalars.Text, "Why the finding does not hold here.");
    }

    protected override Dismissal Make(RecordValues values) => new(values.Get(rule), values.Get(about), values.Get(reason));
}

/// <summary>A value that may be left out: null then.</summary>
public static class Maybe
{
    public static Shape<T?> Of<T>(Shape<T> shape)
        where T : struct => new MaybeShape<T>(shape);

    sealed class MaybeShape<T>(Shape<T> shape) : Shape<T?>
        where T : struct
    {
        public override string Expected => shape.Expected;

        public override Outline Outline => shape.Outline;

        public override bool TryRead(Yaml.YamlNode node, Binding binding, out T? value)
        {
            var isRead = shape.TryRead(node, binding, out var inner);
            value = isRead ? inner : null;
            return isRead;
        }
    }
}
