using GuideGen.Guide.Inspection;
using GuideGen.Guide.Shapes;

namespace GuideGen.Site.Drafting;

/// <summary>The steps of a new tree: a question, a check, a fault and advice, already leading to each other.</summary>
sealed class StepsDraft(ChoiceOutline kinds, Action<string> line)
{
    public const string First = "question";

    public void Write()
    {
        line(First + ":");
        Key("ask", "ask", Blanks.Marker);
        Key("ask", "answers", "{ \"Yes\": measure, \"No\": advice }");
        Key("ask", "cannot-tell", "measure");
        line("measure:");
        Key("do", "do", Blanks.Marker);
        Key("do", "outcomes", $"{{ {Blanks.Marker}: found, {Blanks.Marker}: advice }}");
        Key("do", "cannot-tell", "advice");
        line("found:");
        Key("fault", "fault", Blanks.Marker);
        line("advice:");
        Key("advice", "advice", Blanks.Marker);
        Key("advice", "drive", Blanks.Marker);
    }

    void Key(string way, string key, string value)
    {
        var field = kinds.Ways.First(w => w.Fields.Any(f => f.Key == way && f.IsRequired)).Fields.First(f => f.Key == key);
        line($"  # {field.Help} Write {field.Expected}.");
        line($"  {key}: {value}");
    }
}
