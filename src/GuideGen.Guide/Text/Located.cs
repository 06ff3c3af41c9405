using System.Globalization;

namespace GuideGen.Guide.Text;

/// <summary>A value of the guide and the place where its author wrote it.</summary>
public readonly record struct Located<T>(T Value, SourceSpan Span)
{
    public Located<TOther> With<TOther>(TOther other) => new(other, Span);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value}");
}
