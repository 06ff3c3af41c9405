using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

/// <summary>The answers of the form for a solved fault become a case without retyping, since they bear the keys of a case.</summary>
public sealed class IssueFormTests
{
    [Fact]
    public void The_form_for_a_solved_fault_asks_by_the_keys_of_a_case()
    {
        var asked = Ids("solved-fault.yml");

        Assert.Empty(asked.Except(Keys(GuideShapes.Of(ContentKind.Case))));
        Assert.Empty(GuideShapes.Of(ContentKind.Case).Fields.Where(f => f.IsRequired).Select(f => f.Key).Except(asked));
    }

    [Theory, InlineData("solved-fault.yml"), InlineData("wrong-page.yml")]
    public void Every_question_of_a_form_has_a_name_of_its_own_and_a_label(string form)
    {
        Assert.NotEmpty(Ids(form));
        Assert.Equal(Ids(form).Count, Ids(form).Distinct().Count());
        Assert.All(Body(form).Where(i => i.Find("id") is not null), i => Assert.NotNull(((YamlMap)i.Find("attributes")!.Value).Find("label")));
    }

    static List<string> Ids(string form) => [.. Body(form).Select(i => i.Find("id")?.Value).OfType<YamlScalar>().Select(s => s.Value)];

    static IEnumerable<YamlMap> Body(string form)
    {
        var findings = new FindingList();
        var text = Repository.Read(".github", "ISSUE_TEMPLATE", form);
        var root = Assert.IsType<YamlMap>(YamlReader.Read(new SourceText(form, text), findings));
        Assert.True(findings.IsEmpty);
        return ((YamlList)root.Find("body")!.Value).Items.Cast<YamlMap>();
    }

    static IEnumerable<string> Keys(RecordOutline record) =>
        record.Fields.SelectMany(f => f.Outline is RecordOutline inner ? Keys(inner).Prepend(f.Key) : [f.Key]);
}
