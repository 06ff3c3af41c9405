using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Loading;

/// <summary>Reads one file into one value, and keeps what is found and referred to on the way.</summary>
sealed class FileReading(IGuideFiles files, string path)
{
    public FindingList Findings { get; } = new();

    public List<Reference> References { get; } = [];

    /// <summary>A whole file of structured text, such as a tree.</summary>
    public bool TryReadStructure<T>(ContentKind? kind, string slug, Shape<T> shape, out T value)
    {
        value = default!;
        if (ReadSource() is not { } source) return false;
        if (YamlReader.Read(source, Findings) is not { } root)
        {
            if (Findings.IsEmpty) Findings.Add(Rules.FileEmpty.At(source.Top));
            return false;
        }

        return shape.TryRead(root, BindingFor(new PageOrigin(kind, slug, source, PageBody.Empty)), out value);
    }

    /// <summary>A page: front matter and Markdown.</summary>
    public bool TryReadPage<T>(ContentKind kind, string slug, Shape<T> shape, out T value)
    {
        value = default!;
        if (ReadSource() is not { } source || FrontMatter.Find(source, Findings) is not { } front) return false;
        var root = YamlReader.Read(source, front.Start, front.Length, Findings);
        if (root is null)
        {
            if (Findings.IsEmpty) Findings.Add(Rules.FrontMatterEmpty.At(source.Span(0, 3)));
            return false;
        }

        var body = PageBodyReader.Read(source, front.BodyStart);
        return shape.TryRead(root, BindingFor(new PageOrigin(kind, slug, source, body)), out value);
    }

    Binding BindingFor(PageOrigin origin) => new(origin, Findings, References);

    SourceText? ReadSource()
    {
        var nothing = new SourceText(path, "");
        if (!files.TryRead(path, out var bytes, out var why))
        {
            Findings.Add(Rules.FileUnreadable.At(nothing.Top, why));
            return null;
        }

        if (bytes.Length > LoadLimits.TextBytes)
        {
            Findings.Add(Rules.FileTooLarge.At(nothing.Top, $"{bytes.Length / 1024} KiB", $"{LoadLimits.TextBytes / 1024} KiB"));
            return null;
        }

        var isText = SourceDecoder.TryDecode(bytes, out var text);
        var source = new SourceText(path, text);
        var isEmpty = string.IsNullOrWhiteSpace(text);
        if (!isText) Findings.Add(Rules.TextEncoding.At(source.Span(FirstBroken(text), 0)));
        else if (isEmpty) Findings.Add(Rules.FileEmpty.At(source.Top));
        return isText && !isEmpty ? source : null;
    }

    static int FirstBroken(string text) => Math.Max(0, text.IndexOf('\uFFFD', StringComparison.Ordinal));
}
