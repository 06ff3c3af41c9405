namespace GuideGen.Guide.Text;

/// <summary>A stretch of a file: where a value was written.</summary>
public readonly record struct SourceSpan(SourceText Source, int Start, int Length)
{
    public string Path => Source.Path;

    public TextPosition From => Source.PositionAt(Start);

    public TextPosition To => Source.PositionAt(Start + Length);

    public string Written => Source.Text.Substring(Start, Length);

    public override string ToString() => $"{Path}{From}";
}
