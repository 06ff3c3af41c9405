namespace GuideGen.Site.Views;

/// <summary>
/// How wide words will be in a drawing. Which face a device has is not known, so letters are as wide as in the widest of the
/// common ones: a box is rather too wide than its words cut.
/// </summary>
static class TextWidths
{
    // Shares of the letter size; from memory of DejaVu Sans, rounded up.
    static readonly (string Letters, double Width)[] Classes =
    [
        ("ijlI.,:;'’|! ", 0.33),
        ("frt-()/[]\"“”", 0.43),
        ("mwMW%@…→", 1.0),
        ("ABCDEFGHJKLNOPQRSTUVXYZ&", 0.74),
    ];

    const double Other = 0.64, Bold = 1.12;

    public static double Of(string text, double size, bool bold = false) => text.Sum(WidthOf) * size * (bold ? Bold : 1);

    static double WidthOf(char letter)
    {
        foreach (var (letters, width) in Classes)
        {
            if (letters.Contains(letter, StringComparison.Ordinal)) return width;
        }

        return Other;
    }
}
