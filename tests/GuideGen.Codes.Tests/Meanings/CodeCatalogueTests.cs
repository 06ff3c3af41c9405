namespace GuideGen.Codes.Tests.Meanings;

public sealed class CodeCatalogueTests
{
    // Facts: the open list in Data/. Wording: ours, so a change of words changes a row.
    [Theory]
    [InlineData("P0299", "Turbocharger or supercharger A boost: pressure too low (underboost)")]
    [InlineData("P0102", "Mass or volume air flow sensor A: circuit reads low")]
    [InlineData("P0420", "Catalytic converter system efficiency, bank 1: below the limit")]
    [InlineData("P0302", "Combustion, cylinder 2: misfire")]
    [InlineData("P0135", "Oxygen sensor heater, bank 1, sensor 1: circuit fault")]
    [InlineData("P0016", "Crankshaft position against camshaft position, bank 1, sensor A: do not agree")]
    [InlineData("P2463", "Particulate filter, bank 1, soot build-up: restricted")]
    [InlineData("P0401", "Exhaust gas recirculation (EGR) A flow: too low")]
    [InlineData("P0A80", "Traction battery pack: due for replacement")]
    [InlineData("U0100", "Engine control module (ECM/PCM) A: no communication")]
    [InlineData("C0035", "Wheel speed sensor supply, right front, or left front by many older lists: fault")]
    [InlineData("P2601", "Coolant pump A control: circuit does not perform, or stuck off")]
    [InlineData("P3400", "Cylinder deactivation system, bank 1: fault")]
    public void A_code_is_worded_from_subject_sides_and_condition(string code, string meaning) =>
        Assert.Equal(meaning, CodeCatalogue.Find(TroubleCode.Parse(code))!.Meaning);

    [Theory]
    [InlineData("P0000")]
    [InlineData("P0F12")]
    [InlineData("U0000")]
    [InlineData("P1999")]
    public void A_code_that_nothing_is_known_of_is_not_found(string code) => Assert.Null(CodeCatalogue.Find(TroubleCode.Parse(code)));

    // The open list has a meaning for P1101, which is a maker's own.
    [Fact]
    public void A_maker_s_own_code_has_no_meaning_of_the_standard()
    {
        Assert.NotNull(CodeCatalogue.Find(TroubleCode.Parse("P1101")));
        Assert.Null(CodeCatalogue.FindStandard(TroubleCode.Parse("P1101")));
        Assert.Same(CodeCatalogue.Find(TroubleCode.Parse("P0299")), CodeCatalogue.FindStandard(TroubleCode.Parse("P0299")));
        Assert.Equal(CodeCatalogue.All.Where(e => e.Code.Owner != CodeOwner.Maker), CodeCatalogue.Standard);
    }

    [Fact]
    public void The_same_code_yields_the_same_entry() =>
        Assert.Same(CodeCatalogue.Find(TroubleCode.Parse("P0299")), CodeCatalogue.All.Single(e => e.Code == TroubleCode.Parse("P0299")));

    [Fact]
    public void A_group_holds_exactly_the_codes_that_begin_with_it()
    {
        Assert.All(CodeCatalogue.Groups, g => Assert.NotEmpty(CodeCatalogue.InGroup(g)));
        Assert.Equal(CodeCatalogue.All, CodeCatalogue.Groups.SelectMany(g => CodeCatalogue.InGroup(g)));
        Assert.Empty(CodeCatalogue.InGroup("P"));
        Assert.Empty(CodeCatalogue.InGroup("P0F"));
    }

    [Fact]
    public void Related_codes_are_other_conditions_other_sides_and_neighbours()
    {
        var related = CodeCatalogue.Find(TroubleCode.Parse("P0132"))!.Related;

        Assert.Contains(TroubleCode.Parse("P0131"), related.SameSubject);
        Assert.Contains(TroubleCode.Parse("P0152"), related.SameCondition);
        Assert.DoesNotContain(TroubleCode.Parse("P0151"), related.SameCondition);
        Assert.Equal([TroubleCode.Parse("P0131"), TroubleCode.Parse("P0133")], related.Neighbours);
    }

    [Fact]
    public void Relations_of_every_code_lead_to_known_codes_and_back()
    {
        foreach (var entry in CodeCatalogue.All.Where((_, i) => i % 7 == 0))
        {
            var related = entry.Related;
            Assert.DoesNotContain(entry.Code, (IEnumerable<TroubleCode>)[.. related.SameSubject, .. related.SameCondition, .. related.Neighbours]);
            Assert.All(related.SameSubject, c => Assert.Contains(entry.Code, CodeCatalogue.Find(c)!.Related.SameSubject));
            Assert.All(related.Neighbours, c => Assert.Contains(entry.Code, CodeCatalogue.Find(c)!.Related.Neighbours));
        }
    }

    [Fact]
    public void The_wheel_of_C0035_is_never_stated_as_certain()
    {
        var entry = CodeCatalogue.Find(TroubleCode.Parse("C0035"))!;

        Assert.Equal(Support.Weak, entry.Support);
        Assert.Contains("right front", entry.Meaning, StringComparison.Ordinal);
        Assert.Contains("left front", entry.Meaning, StringComparison.Ordinal);
        Assert.Contains("left front", entry.Notes[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("P1101", "maker's own range")]
    [InlineData("B3A1B", "keeps this range back")]
    [InlineData("B0001", "Only one of three public lists")]
    public void A_meaning_that_must_not_be_trusted_too_far_says_so(string code, string note) =>
        Assert.Contains(CodeCatalogue.Find(TroubleCode.Parse(code))!.Notes, n => n.Contains(note, StringComparison.Ordinal));

    [Fact]
    public void A_well_supported_meaning_carries_no_note() => Assert.Empty(CodeCatalogue.Find(TroubleCode.Parse("P0301"))!.Notes);

    [Theory]
    [InlineData("P0AA6", "High voltage can kill")]
    [InlineData("B0001", "Airbags")]
    [InlineData("P0087", "cuts skin")]
    [InlineData("P0128", "scalds")]
    [InlineData("P0533", "licensed")]
    [InlineData("C0034", "Brakes and steering")]
    [InlineData("P0351", "voltage that can kill")]
    [InlineData("P0480", "start on their own")]
    public void A_subject_that_can_hurt_brings_its_caution(string code, string words) =>
        Assert.Contains(CodeCatalogue.Find(TroubleCode.Parse(code))!.Cautions, c => c.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void The_packed_catalogue_stays_within_60_kilobytes()
    {
        using var packed = typeof(CodeCatalogue).Assembly.GetManifestResourceStream("catalogue.bin")!;
        Assert.InRange(packed.Length, 1, 60_000);
    }
}
