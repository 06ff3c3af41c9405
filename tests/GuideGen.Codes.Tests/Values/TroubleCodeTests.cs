using CsCheck;

namespace GuideGen.Codes.Tests.Values;

public sealed class TroubleCodeTests
{
    static readonly IEnumerable<TroubleCode> All = Enumerable.Range(0, 0x10000).Select(v => new TroubleCode((ushort)v));

    [Fact]
    public void Every_value_prints_parses_and_splits_into_bytes_and_back()
    {
        Assert.All(All, code =>
        {
            Assert.Equal(code, TroubleCode.Parse(code.ToString()));
            Assert.Equal(code, TroubleCode.Parse(code.ToString().ToLowerInvariant()));
            Assert.Equal(code, TroubleCode.FromBytes(code.High, code.Low));
        });
        Assert.Equal(0x10000, All.Select(c => c.ToString()).Distinct().Count());
    }

    // The published source of each row stands in its last column.
    [Theory]
    [InlineData(0x01, 0x33, "P0133", "interface-chip manual's example 43 01 33, quoted on mp3car.com thread 147550; Stack Overflow 75415507")]
    [InlineData(0x03, 0x01, "P0301", "Stack Overflow 75415507")]
    [InlineData(0x01, 0x43, "P0143", "ISO 15031-5 figure 19, quoted in CSDN articles 132052474 and 134818081")]
    [InlineData(0x01, 0x35, "P0135", "talk.maemo.org post 1257514, worked bit by bit")]
    [InlineData(0x01, 0x02, "P0102", "mp3car.com thread 147550")]
    [InlineData(0x01, 0x13, "P0113", "mp3car.com thread 147550")]
    [InlineData(0xC0, 0x73, "U0073", "cnblogs 17514220")]
    [InlineData(0x90, 0x00, "B1000", "cnblogs 17514220")]
    [InlineData(0x01, 0x27, "P0127", "CSDN 122546367")]
    [InlineData(0x80, 0x39, "B0039", "CSDN 122546367")]
    [InlineData(0x40, 0x31, "C0031", "CSDN 122546367")]
    [InlineData(0x92, 0x34, "B1234", "CSDN 122546367 (hex; the letter form by the bit rule)")]
    [InlineData(0xC1, 0x00, "U0100", "an open data set keyed by the raw value, engine module lost")]
    [InlineData(0xC1, 0x21, "U0121", "an open data set keyed by the raw value, brake module lost")]
    [InlineData(0xD1, 0x00, "U1100", "an open data set keyed by the raw value")]
    [InlineData(0xD2, 0x00, "U1200", "a public battery-module code list that prints both forms")]
    [InlineData(0xC2, 0x55, "U0255", "a public battery-module code list that prints both forms")]
    [InlineData(0x11, 0xD8, "P11D8", "a public battery-module code list that prints both forms")]
    [InlineData(0x60, 0x0E, "C200E", "a public maker's code list that prints both forms")]
    [InlineData(0xD0, 0x27, "U1027", "a public maker's code list that prints both forms")]
    [InlineData(0xD3, 0x00, "U1300", "a public maker's code list that prints both forms")]
    [InlineData(0x91, 0xB6, "B11B6", "CSDN 133080567 (hex; the letter form by the bit rule)")]
    [InlineData(0xA4, 0x13, "B2413", "CSDN 133080567 (hex; the letter form by the bit rule)")]
    [InlineData(0xD3, 0x18, "U1318", "CSDN 133080567 (hex; the letter form by the bit rule)")]
    [InlineData(0xE1, 0x43, "U2143", "a public bench note, 59 02 FF E1 43 81 68 (the letter form by the bit rule)")]
    [InlineData(0x1B, 0xB1, "P1BB1", "a public bench note, 1B B1 08 28 (the letter form by the bit rule)")]
    public void Bytes_and_text_agree_with_published_examples(byte high, byte low, string text, string source)
    {
        Assert.NotEmpty(source);
        Assert.Equal(text, TroubleCode.FromBytes(high, low).ToString());
        Assert.Equal((high, low), (TroubleCode.Parse(text).High, TroubleCode.Parse(text).Low));
    }

    // SAE J2012: contents pages of the 2002 and 2007 editions, and a note checked against the 2025 edition for P3 and U3.
    [Theory]
    [InlineData("P0FFF", CodeOwner.IsoSae)]
    [InlineData("P1000", CodeOwner.Maker)]
    [InlineData("P2000", CodeOwner.IsoSae)]
    [InlineData("P2FFF", CodeOwner.IsoSae)]
    [InlineData("P3000", CodeOwner.Maker)]
    [InlineData("P33FF", CodeOwner.Maker)]
    [InlineData("P3400", CodeOwner.IsoSae)]
    [InlineData("P3FFF", CodeOwner.IsoSae)]
    [InlineData("C0035", CodeOwner.IsoSae)]
    [InlineData("C1000", CodeOwner.Maker)]
    [InlineData("C2FFF", CodeOwner.Maker)]
    [InlineData("C3000", CodeOwner.Reserved)]
    [InlineData("B0001", CodeOwner.IsoSae)]
    [InlineData("B1000", CodeOwner.Maker)]
    [InlineData("B2000", CodeOwner.Maker)]
    [InlineData("B3FFF", CodeOwner.Reserved)]
    [InlineData("U0100", CodeOwner.IsoSae)]
    [InlineData("U1000", CodeOwner.Maker)]
    [InlineData("U2000", CodeOwner.Maker)]
    [InlineData("U3003", CodeOwner.IsoSae)]
    public void The_owner_follows_the_letter_and_the_second_character(string text, CodeOwner owner) =>
        Assert.Equal(owner, TroubleCode.Parse(text).Owner);

    [Fact]
    public void The_owners_share_the_whole_space_out()
    {
        var counts = All.CountBy(c => c.Owner).ToDictionary();

        // In blocks of 4,096: standard P0 P2 C0 B0 U0 U3, maker P1 C1 C2 B1 B2 U1 U2, kept back C3 B3; P3 is split at P3400.
        Assert.Equal((6 * 4096) + 0xC00, counts[CodeOwner.IsoSae]);
        Assert.Equal((7 * 4096) + 0x400, counts[CodeOwner.Maker]);
        Assert.Equal(2 * 4096, counts[CodeOwner.Reserved]);
    }

    // SAE J2012 group titles up to 2007; the later blocks by what the open code list holds.
    [Theory]
    [InlineData("P0087", "fuel-air-emissions")]
    [InlineData("P0113", "fuel-air")]
    [InlineData("P0299", "injectors")]
    [InlineData("P0301", "ignition")]
    [InlineData("P0401", "emissions")]
    [InlineData("P0507", "speed-idle")]
    [InlineData("P0671", "computer")]
    [InlineData("P0745", "transmission")]
    [InlineData("P0A80", "electric-drive")]
    [InlineData("P0F00", "powertrain")]
    [InlineData("P1301", "ignition")]
    [InlineData("P2463", "emissions")]
    [InlineData("P2900", "powertrain")]
    [InlineData("P3400", "cylinder-deactivation")]
    [InlineData("U0001", "bus-hardware")]
    [InlineData("U0121", "lost-contact")]
    [InlineData("U0300", "software")]
    [InlineData("U0401", "bad-data")]
    [InlineData("U3003", "module-supply")]
    [InlineData("U1000", "network")]
    [InlineData("B0001", "restraints")]
    [InlineData("B2001", "body")]
    [InlineData("C0031", "brakes")]
    [InlineData("C1145", "chassis")]
    public void The_area_is_a_hint_by_the_first_three_characters(string text, string key) =>
        Assert.Equal(key, TroubleCode.Parse(text).Area.Key);

    [Theory]
    [InlineData("")]
    [InlineData("P029")]
    [InlineData("P02990")]
    [InlineData("P4299")]
    [InlineData("P/299")]
    [InlineData("F0299")]
    [InlineData("P02G9")]
    [InlineData("PO299")]
    [InlineData(" P029")]
    [InlineData("P-029")]
    [InlineData("0P299")]
    [InlineData("\u03300299")]
    [InlineData("\u00100299")]
    [InlineData("P\u0660299")]
    public void Anything_but_the_five_characters_is_refused(string text)
    {
        Assert.False(TroubleCode.TryParse(text, out _));
        Assert.Throws<FormatException>(() => TroubleCode.Parse(text));
    }

    [Fact]
    public void Codes_sort_as_their_text_does() =>
        Gen.UShort.Select(Gen.UShort).Sample((a, b) =>
            Math.Sign(new TroubleCode(a).CompareTo(new TroubleCode(b))) ==
            Math.Sign(string.CompareOrdinal(new TroubleCode(a).ToString(), new TroubleCode(b).ToString())));

    [Theory]
    [InlineData("B0001", "C0001")]
    [InlineData("C0001", "P0001")]
    [InlineData("P0FFF", "P1000")]
    [InlineData("P3FFF", "U0001")]
    public void Operators_compare_as_the_text_does(string before, string after)
    {
        TroubleCode low = TroubleCode.Parse(before), high = TroubleCode.Parse(after), same = TroubleCode.Parse(before);

        Assert.True(low < high && low <= high && low <= same && high > low && high >= low && same >= low);
        Assert.False(high < low || high <= low || low < same || low > high || low >= high || low > same);
    }

    [Fact]
    public void Text_is_written_only_where_it_has_room()
    {
        var code = TroubleCode.Parse("U3E0F");
        var room = new char[7];

        Assert.False(code.TryFormat(room.AsSpan(0, 4), out var written));
        Assert.Equal(0, written);
        Assert.True(code.TryFormat(room, out written));
        Assert.Equal("U3E0F", new(room, 0, written));
    }

    [Fact]
    public void Parsing_and_comparing_allocate_nothing()
    {
        var warm = Work(); // Tables and compiled code are made once, at their first use.
        var before = GC.GetAllocatedBytesForCurrentThread();
        var again = Work();
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.Equal(warm, again);
        Assert.Equal(0, allocated);

        static int Work()
        {
            var first = TroubleCode.Parse("P0299");
            var held = 0;
            for (var i = 0; i < 1000; i++)
            {
                var code = TroubleCode.Parse("u0121");
                held += code.CompareTo(first) + code.High + (int)code.Owner + code.Area.Key.Length;
            }
            return held;
        }
    }
}
