using System.Globalization;

namespace GuideGen.Codes.Tests.Meanings;

/// <summary>A row of the open list.</summary>
/// <param name="Lists">How many of three public lists carry the code.</param>
sealed record ListedCode(TroubleCode Code, string Text, int Lists)
{
    public static readonly ListedCode[] All =
    [
        .. DataFile.Rows("generic-codes.tsv").Skip(1).Select(r => new ListedCode(TroubleCode.Parse(r[0]), r[1], int.Parse(r[2], CultureInfo.InvariantCulture))),
    ];
}
