using GuideGen.Guide.Findings;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Tests;

/// <summary>SAE J2012: a letter of four, a digit 0 to 3, three hexadecimal digits.</summary>
public sealed class CodeFindingsTests
{
    [Theory]
    [InlineData("", "it has 0 characters, not 5", "")]
    [InlineData("P029", "it has 4 characters, not 5", "")]
    [InlineData("P02 99", "it has 6 characters, not 5", " Write P0299 if that is meant.")]
    [InlineData("F0299", "it begins with 'F', not with P, C, B or U", "")]
    [InlineData("P4299", "its second character is '4', not 0 to 3", "")]
    [InlineData("P/299", "its second character is '/', not 0 to 3", "")]
    [InlineData("PO299", "its second character is 'O', not 0 to 3", " Write P0299 if that is meant.")]
    [InlineData("P0G99", "'G' is not one of 0-9 and A-F", "")]
    [InlineData("P1G99", "'G' is not one of 0-9 and A-F", "")]
    [InlineData("P3G99", "'G' is not one of 0-9 and A-F", "")]
    [InlineData("P029L", "'L' is not one of 0-9 and A-F", " Write P0291 if that is meant.")]
    [InlineData("p0299", "it is not in capital letters", " Write P0299 if that is meant.")]
    [InlineData("P0000", "it stands for 'no code stored'", "")]
    [InlineData("POOOO", "its second character is 'O', not 0 to 3", "")]
    public void What_is_wrong_with_a_code_is_said_and_what_may_be_meant(string written, string objection, string question)
    {
        var finding = CodeFindings.NotACode(new(written, new SourceText("a.md", written).Span(0, written.Length)));

        Assert.Contains(objection, finding.Message, StringComparison.Ordinal);
        Assert.EndsWith(question.Length == 0 ? "(SAE J2012)." : question, finding.Hint, StringComparison.Ordinal);
    }
}
