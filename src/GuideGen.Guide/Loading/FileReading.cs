using System.Buffers;
using System.Diagnostics.CodeAnalysis;
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
    /// <summary>True if the guide's settings allow some HTML in its pages.</summary>
    public bool AllowsHtml { get; init; }

    /// <summary>The language of the guide's pages.</summary>
    public string Language { get; init; } = "en";

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

        if (PageBodyReader.Read(source, front.BodyStart, Findings, AllowsHtml) is not { } body) return false;
        return shape.TryRead(root, BindingFor(new PageOrigin(kind, slug, source, body with { Language = Language })), out value);
    }

    /// <summary>A file that is used as it stands.</summary>
    public bool TryReadText([NotNullWhen(true)] out SourceText? text) => (text = ReadSource()) is not null;

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
            Findings.Add(Rules.FileTooLarge.At(nothing.Top, Size(bytes.Length), Size(LoadLimits.TextBytes)));
            return null;
        }

        var isText = SourceDecoder.TryDecode(bytes, out var text);
        var source = new SourceText(path, text);
        var objection = Objection(source, isText);
        if (objection is null && source.Text.Contains(Inspection.Blanks.Marker, StringComparison.Ordinal)) Findings.AddRange(Inspection.Blanks.In(source));
        if (objection is not null) Findings.Add(objection);
        return objection is null ? source : null;
    }

    static Finding? Objection(SourceText source, bool isText)
    {
        if (!isText) return Rules.TextEncoding.At(source.Span(source.Text.Length, 0));
        if (string.IsNullOrWhiteSpace(source.Text)) return Rules.FileEmpty.At(source.Top);
        var control = source.Text.AsSpan().IndexOfAny(ControlCharacters);
        return control < 0 ? null : Rules.TextControl.At(source.Span(control, 1), $"U+{(int)source.Text[control]:X4}");
    }

    // YAML ends at a NUL without a word, and the others cannot be seen in an editor.
    static readonly SearchValues<char> ControlCharacters = SearchValues.Create(
        [.. Enumerable.Range(0, 128).Select(i => (char)i).Where(c => char.IsControl(c) && c is not ('\t' or '\n' or '\r'))]);

    /// <summary>Rounded up, so that a file that is too large never seems to have just the right size.</summary>
    static string Size(int bytes) => $"{(bytes + 1023) / 1024} KiB";
}
