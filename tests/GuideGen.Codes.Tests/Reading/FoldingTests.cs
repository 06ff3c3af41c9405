using GuideGen.Codes.Reading;

namespace GuideGen.Codes.Tests.Reading;

public sealed class FoldingTests
{
    // The look-alikes of Unicode TR39's table of confusables that can stand in a code; dashes and blanks by their general categories Pd and Zs.
    [Theory]
    [InlineData("abcxyz", "ABCXYZ")]
    [InlineData("`{|}~@[\\]^", "`{|}~@[\\]^")]
    [InlineData(" !09:?", " !09:?")]
    [InlineData("АВСЕОРІ", "ABCEOPI")]
    [InlineData("авсеорі", "ABCEOPI")]
    [InlineData("ΑΒΕΟΡΙ", "ABEOPI")]
    [InlineData("αβεορι", "ABEOPI")]
    [InlineData("\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFE63", "---------")]
    [InlineData("\t\v\f\u0085\u00A0\u2007\u2009\u202F\u205F\u3000", "          ")]
    [InlineData("\r\n", "\n\n")]
    [InlineData("！ＡＺａｚ０９～", "!AZAZ09~")]
    [InlineData("\uFF00\uFF5F", "\uFF00\uFF5F")]
    [InlineData("\U0001F600", "\uFFFD\uFFFD")]
    [InlineData("\uD7FF\uE000", "\uD7FF\uE000")]
    [InlineData("\u007F\u001F", "\u007F\u001F")]
    [InlineData("жλ中", "жλ中")]
    public void A_text_keeps_its_length_and_only_look_alikes_change(string text, string folded) => Assert.Equal(folded, Folding.Fold(text));
}
