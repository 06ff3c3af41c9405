using System.Globalization;

namespace GuideGen.Codes;

/// <summary>A code with what a control unit reported beside it, where it did.</summary>
/// <param name="FailureType">The failure type byte, the low byte of a three-byte code (ISO 14229-1 with SAE J2012-DA).</param>
public readonly record struct ReportedCode(TroubleCode Code, byte? FailureType = null, StatusByte? Status = null)
{
    /// <summary>The code, and the failure type where there is one: <c>P0299</c>, <c>C0031-14</c>. The status is not printed.</summary>
    public override string ToString() =>
        FailureType is { } type ? string.Create(CultureInfo.InvariantCulture, $"{Code}-{type:X2}") : Code.ToString();
}
