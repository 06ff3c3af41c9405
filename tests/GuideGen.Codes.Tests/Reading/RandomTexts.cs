using CsCheck;

namespace GuideGen.Codes.Tests.Reading;

/// <summary>Texts made of the pieces that matter to reading, in any order, and of any characters at all.</summary>
static class RandomTexts
{
    static readonly string[] Pieces =
    [
        "P0299", "c0031", "U0121-00", "P20EE00", "B1000:14-AF", "PO299", "P113", "P", "C", "0299", "$C121", "0x0299", "$1299", "00", "AF", "14", "[032]",
        " ", " ", " ", "\n", "\r\n", "-", ":", ".", ",", ";", "/", "(", ")", "–", "\u00a0", "'", "#", "_", "=", "@", "://", ">",
        "code ", "codes ", "DTC: ", "stored ", "pending", "current ", "no ", "not", "MIL on", "permanent, ", "ECM ", "[ABS] ", "TCM:", "7E8 ", "module ", "and ",
        "part ", "part no. ", "connector ", "oil ", "25Nm", "bolt", "came back ", "turbo ", "Р", "ё", "🚗", "𝐏", "s",
        "43 ", "02 99 ", "01 13 ", "00 00 ", "47 00", "59 02 FF ", "7F 03 11", "7E8 06 43 02 02 99 01 13", "10 0A 43 04 02 99 01 13", "21 04 01 20 02", "00A\n", "0: ",
        "1: ", "48 6B 10 43 ", "87 F1 10 43 ", "18 DA F1 10 ", "18DAF110", "SEARCHING...", "7", "430299",
    ];

    static readonly string[] BytePieces = ["43 ", "47 ", "59 02 ", "00 00 ", "01 ", "\n", "7E8 ", "0: ", "1: ", "10 ", "21 "];

    public static Gen<string> OfPieces { get; } = Gen.Int[0, Pieces.Length - 1].Select(i => Pieces[i]).Array[0, 14].Select(string.Concat);

    public static Gen<string> OfBytes { get; } = Gen.OneOf(
        Gen.Byte.Select(b => b.ToString("X2", System.Globalization.CultureInfo.InvariantCulture) + " "),
        Gen.Int[0, BytePieces.Length - 1].Select(i => BytePieces[i])).Array[0, 30].Select(string.Concat);

    public static Gen<string> Mixed { get; } = Gen.OneOf(OfPieces, OfPieces, OfBytes, Gen.String[0, 40]);
}
