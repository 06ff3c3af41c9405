namespace GuideGen.Guide.Text;

/// <summary>A place in a file as people count: the first line is 1, the first column is 1, columns in UTF-16 units.</summary>
public readonly record struct TextPosition(int Line, int Column)
{
    public override string ToString() => $"({Line},{Column})";
}
