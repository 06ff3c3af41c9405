using GuideGen.Guide.Inspection;
using GuideGen.Testing;

namespace GuideGen.Guide.Tests;

public sealed class PersonalDataTests
{
    static readonly Dictionary<string, string> Words = new()
    {
        ["mail"] = "an e-mail address",
        ["vin"] = "a vehicle identification number",
        ["phone"] = "a phone number",
        ["plate"] = "a number plate",
        ["name"] = "a name",
    };

    public static TheoryData<int> Rows => new(Enumerable.Range(0, PersonalRow.All.Count));

    // The identification numbers are made up; the shapes are those of ISO 3779 and of plates in several countries (from memory).
    [Theory, MemberData(nameof(Rows))]
    public void What_leads_to_a_person_is_found_and_what_belongs_to_the_trade_is_left_alone(int row) =>
        Assert.Equal(PersonalRow.All[row].Found.Select(f => (f.Text, Words[f.Kind])), PersonalData.In(PersonalRow.All[row].Text));
}
