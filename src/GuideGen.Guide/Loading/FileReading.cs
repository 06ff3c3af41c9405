using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Keeping;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;
using GuideGen.Guide.Yaml;

namespace GuideGen.Guide.Loading;

/// <summary>Reads one file into one value, and keeps what is found and referred to on the way.</summary>
sealed class FileReading(IGuideFiles files, string path, GuideMemory memory)
{
    /// <summary>True if the guide's settings allow some HTML in its pages.</summary>
    public bool AllowsHtml { get; init; }

    /// <summary>The language of the file's text; that of the translation, if there is one.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Path of the file with the words in that language; null where the file's own are taken.</summary>
    public string? Translation { get; init; }

    public FindingList Findings { get; } = new();

    public List<Reference> References { get; } = [];

    /// <summary>Of the paths and bytes of all that was read.</summary>
    public Digest Whole { get; private set; }

    /// <summary>Of what other files can know of this one: all of it, but of a page that could be read nothing of its running text apart from headings and codes.</summary>
    public Digest Face { get; private set; }

    /// <summary>A whole file of structured text, such as a tree.</summary>
    public bool TryReadStructure<T>(ContentKind? kind, string slug, Shape<T> shape, out T value)
    {
        value = default!;
        if (ReadStructure(path) is not { } written || Translated(written, shape, ReadStructure) is not { } file) return false;
        return shape.TryRead(file.Root, BindingFor(OriginOf(kind, slug, file.Source, PageBody.Empty)), out value);
    }

    /// <summary>A page: front matter and Markdown.</summary>
    public bool TryReadPage<T>(ContentKind kind, string slug, Shape<T> shape, out T value)
    {
        value = default!;
        if (ReadFront(path) is not { } written || Translated(written, shape, ReadFront) is not { } file) return false;
        if (BodyOf(file) is not { } body) return false;
        Face = FaceOf(written, file, body);
        return shape.TryRead(file.Root, BindingFor(OriginOf(kind, slug, file.Source, body)), out value);
    }

    /// <summary>A file that is used as it stands.</summary>
    public bool TryReadText([NotNullWhen(true)] out SourceText? text)
    {
        text = ReadSource(path)?.Source;
        if (text is not null) Findings.AddRange(Blanks.In(text));
        return text is not null;
    }

    /// <param name="BodyStart">Where the Markdown begins; 0 if there is none.</param>
    readonly record struct ReadFile(SourceText Source, Digest Content, YamlNode Root, int BodyStart)
    {
        public ReadOnlySpan<char> Front => Source.Text.AsSpan(0, BodyStart);
    }

    ReadFile? ReadStructure(string file)
    {
        if (ReadSource(file) is not var (source, content)) return null;
        var root = RootOf(source, content, 0, source.Text.Length);
        if (root is null && Findings.IsEmpty) Findings.Add(Rules.FileEmpty.At(source.Top));
        return root is null ? null : new ReadFile(source, content, root, 0);
    }

    ReadFile? ReadFront(string file)
    {
        if (ReadSource(file) is not var (source, content)) return null;
        if (FrontMatter.Find(source, Findings) is not { } front)
        {
            Findings.AddRange(Blanks.In(source));
            return null;
        }

        var root = RootOf(source, content, front.Start, front.Length);
        if (root is null && Findings.IsEmpty) Findings.Add(Rules.FrontMatterEmpty.At(source.Span(0, 3)));
        return root is null ? null : new ReadFile(source, content, root, front.BodyStart);
    }

    /// <summary>The structured text of a file, which is looked through for blanks as a whole on the occasion.</summary>
    YamlNode? RootOf(SourceText source, Digest content, int start, int length) => Kept(
        new KeptKey(start == 0 ? KeptKind.Yaml : KeptKind.FrontMatter, default, content),
        new YamlForm(source),
        found =>
        {
            found.AddRange(Blanks.In(source));
            return YamlReader.Read(source, start, length, found);
        });

    PageBody? BodyOf(ReadFile file) => Kept(
        new KeptKey(AllowsHtml ? KeptKind.BodyWithHtml : KeptKind.Body, default, file.Content),
        new BodyForm(file.Source),
        found => PageBodyReader.Read(file.Source, file.BodyStart, found, AllowsHtml));

    /// <summary>What there is nothing to say about is kept.</summary>
    T? Kept<T>(KeptKey key, IKeptForm<T> form, Func<FindingList, T?> read)
        where T : class
    {
        if (memory.TryFind(key, form, out var kept)) return kept;
        var found = new FindingList();
        var value = read(found);
        Findings.AddRange(found.ToSorted());
        if (value is not null && found.IsEmpty) memory.Keep(key, form, value);
        return value;
    }

    static Digest FaceOf(ReadFile written, ReadFile file, PageBody body)
    {
        using var face = new Digester();
        face.Add(written.Source.Path).Add(written.Front).Add(file.Source.Path).Add(file.Front);
        foreach (var heading in body.Headings) face.Add(heading.Anchor);
        foreach (var code in body.Codes) face.Add(code.ToString());
        return face.Take();
    }

    /// <returns>The file as it was written, or with the words and the text of its translation. Null if that one cannot be read.</returns>
    ReadFile? Translated<T>(ReadFile written, Shape<T> shape, Func<string, ReadFile?> read)
    {
        if (Translation is null) return written;
        if (read(Translation) is not { } own) return null;
        return own with { Root = new Translating(Findings, path).Merge(written.Root, own.Root, shape.Outline) };
    }

    PageOrigin OriginOf(ContentKind? kind, string slug, SourceText source, PageBody body) => new(kind, slug, source, body with { Language = Language }) { Path = path, Whole = Whole, Face = Face };

    Binding BindingFor(PageOrigin origin) => new(origin, Findings, References);

    (SourceText Source, Digest Content)? ReadSource(string file)
    {
        var nothing = new SourceText(file, "");
        if (!files.TryRead(file, out var bytes, out var why))
        {
            Findings.Add(Rules.FileUnreadable.At(nothing.Top, why));
            Took(file, default);
            return null;
        }

        var content = Digest.Of(bytes);
        Took(file, content);

        if (bytes.Length > GuideLimits.TextBytes)
        {
            Findings.Add(Rules.FileTooLarge.At(nothing.Top, Size(bytes.Length), Size(GuideLimits.TextBytes)));
            return null;
        }

        var isText = SourceDecoder.TryDecode(bytes, out var text);
        var source = new SourceText(file, text);
        var objection = Objection(source, isText);
        if (objection is null) return (source, content);
        Findings.Add(objection);
        return null;
    }

    void Took(string file, Digest content)
    {
        using var all = new Digester();
        Face = Whole = all.Add(Whole).Add(file).Add(content).Take();
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
