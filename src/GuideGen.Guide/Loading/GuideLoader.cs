using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Hazards;
using GuideGen.Guide.Links;
using GuideGen.Guide.Model;
using GuideGen.Guide.Pictures;
using GuideGen.Guide.Shapes;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Loading;

/// <summary>The first stage: files to a typed, immutable guide in which every value knows its place.</summary>
public sealed class GuideLoader
{
    public const string SettingsFile = "site-config.yml";

    internal const string VehicleFile = "content/vehicle.yml";

    internal const string HazardsFile = "content/hazards.yml";

    internal const string TermsFile = "content/terms.yml";

    readonly IGuideFiles files;
    readonly GuideMemory memory;
    readonly FindingList findings = new();
    readonly List<Digest> commonFiles = [];
    readonly List<Digest> faces = [];
    readonly List<Reference> references = [];
    readonly FileSorting sorting;
    readonly FrozenDictionary<string, string> translations;
    readonly string? edition;
    bool allowsHtml;
    string language = "en";

    /// <param name="edition">Language tag of the edition to read; null for the first.</param>
    GuideLoader(IGuideFiles files, string? edition, GuideMemory memory)
    {
        (this.files, this.edition, this.memory) = (files, edition, memory);
        sorting = FileSorting.Of(files.Paths, findings);
        translations = sorting.Translations.Where(t => t.Language == edition).ToFrozenDictionary(t => t.Of, t => t.Path);
    }

    /// <summary>Never throws for what an author wrote: whatever is wrong becomes a finding, and the rest is read.</summary>
    /// <param name="memory">Of earlier readings of the guide; null if it is read once.</param>
    public static LoadedGuide Load(IGuideFiles files, GuideMemory? memory = null)
    {
        memory ??= GuideMemory.None;
        memory.Turn();
        var loader = new GuideLoader(files, null, memory);
        var guide = loader.LoadGuide();
        loader.findings.AddRange(files.LeftOut.Select(OfLeftOut));
        loader.findings.AddRange(TranslationFindings.Of(loader.sorting, guide.Settings));
        return new LoadedGuide(guide, loader.findings.ToSorted());
    }

    static Finding OfLeftOut(LeftOut left)
    {
        var place = new SourceText(left.Path, "").Top;
        return left.Why is { } why ? Rules.FileUnreadable.At(place, why) : Rules.FileLinked.At(place);
    }

    /// <summary>The guide as its edition in another language has it: translated files say their words in it, all others stand as they are.</summary>
    /// <param name="language">Language tag (BCP 47), one of those that the settings list.</param>
    /// <returns>With the findings in translated files only; the others are those of the first edition.</returns>
    /// <param name="memory">As the first edition was read with.</param>
    public static LoadedGuide LoadIn(IGuideFiles files, string language, GuideMemory? memory = null)
    {
        var loader = new GuideLoader(files, language, memory ?? GuideMemory.None);
        var guide = loader.LoadGuide();
        return new LoadedGuide(guide, [.. loader.findings.ToSorted().Where(f => loader.translations.Values.Contains(f.Span.Path))]);
    }

    GuideContent LoadGuide()
    {
        var settings = LoadOne(SettingsFile, GuideShapes.Settings, Fallbacks.Settings, isRequired: true);
        allowsHtml = !settings.Html.IsEmpty;
        language = settings.Language.Value;
        var editions = settings.AlsoIn.Select(l => l.Value).Prepend(language).ToImmutableArray();
        if (edition is not null) settings = settings.For(edition);
        var vehicle = LoadOne(VehicleFile, GuideShapes.Vehicle, Fallbacks.Vehicle, isRequired: true);
        var own = LoadOne(HazardsFile, GuideShapes.Hazards, [], isRequired: false);
        var terms = LoadOne(TermsFile, GuideShapes.Terms, [], isRequired: false);
        var guide = new GuideContent(
            settings,
            vehicle,
            Shelf(ContentKind.Fault, GuideShapes.Fault),
            Shelf(ContentKind.Check, GuideShapes.Check),
            Shelf(ContentKind.Symptom, GuideShapes.Symptom),
            Shelf(ContentKind.Part, GuideShapes.Part),
            Shelf(ContentKind.Task, GuideShapes.Task),
            Shelf(ContentKind.Code, GuideShapes.Code),
            Shelf(ContentKind.Tree, GuideShapes.Tree),
            LoadAll(ContentKind.Case, GuideShapes.Case))
        {
            Hazards = WithOwn(own),
            Terms = terms,
            Editions = editions,
            References = [.. references],
            Slugs = sorting.Slugs,
            Files = sorting.Files,
            Unsure = Unsure(),
            Assets = sorting.Assets,
            Pictures = ReadPictures(),
            ThemePieces = ReadThemePieces(),
        };
        var common = CommonOf(guide);
        return guide with { Common = common, Frame = FrameOf(common) };
    }

    Shelf<T> Shelf<T>(ContentKind kind, Shape<T> shape)
        where T : class, IGuideEntry => new(LoadAll(kind, shape));

    /// <summary>Reads the files of a kind side by side; what they yield is put together in the order of their paths.</summary>
    ImmutableArray<T> LoadAll<T>(ContentKind kind, Shape<T> shape)
    {
        var read = SideBySide.Map([.. sorting.FilesOf(kind)], file => Recalled(file.Path, from =>
        {
            var reading = ReadingOf(from, file.Path);
            var isRead = NameKinds.Ending(kind) == ".md"
                ? reading.TryReadPage(kind, file.Slug, shape, out var value)
                : reading.TryReadStructure(kind, file.Slug, shape, out value);
            return (reading, isRead, value);
        }));
        foreach (var (reading, _, _) in read)
        {
            Keep(reading);
            faces.Add(reading.Face);
        }

        return [.. read.Where(r => r.isRead).Select(r => r.value)];
    }

    /// <summary>The result of an earlier reading, where nothing that it rests on is different.</summary>
    T Recalled<T>(string path, Func<IGuideFiles, T> read)
        where T : notnull
    {
        string[] paths = translations.GetValueOrDefault(path) is { } translation ? [path, translation] : [path];
        return memory.Recall(files, paths, $"{language} {edition} {allowsHtml}", read);
    }

    T LoadOne<T>(string path, Shape<T> shape, T fallback, bool isRequired)
    {
        if (!files.Paths.Contains(path))
        {
            if (isRequired) findings.Add(Rules.FileMissing.At(new SourceText(path, "").Top, path));
            return fallback;
        }

        var reading = ReadingOf(files, path);
        var isRead = reading.TryReadStructure(null, Path.GetFileNameWithoutExtension(path), shape, out var value);
        Keep(reading);
        commonFiles.Add(reading.Face);
        return isRead ? value : fallback;
    }

    FileReading ReadingOf(IGuideFiles from, string path)
    {
        var translation = translations.GetValueOrDefault(path);
        return new FileReading(from, path, memory) { AllowsHtml = allowsHtml, Translation = translation, Language = translation is null ? language : edition! };
    }

    FrozenDictionary<string, Picture> ReadPictures()
    {
        var read = SideBySide.Map([.. sorting.Assets], asset => Recalled(LinkTable.PathOfAsset(asset), from =>
        {
            var found = new FindingList();
            return (Asset: asset, Picture: PictureReader.Read(from, LinkTable.PathOfAsset(asset), found), Found: found);
        }));
        foreach (var (_, _, found) in read) findings.AddRange(found.ToSorted());
        return read.Where(r => r.Picture is not null).ToFrozenDictionary(r => r.Asset, r => r.Picture!);
    }

    ImmutableSortedDictionary<string, SourceText> ReadThemePieces()
    {
        var pieces = ImmutableSortedDictionary.CreateBuilder<string, SourceText>(StringComparer.Ordinal);
        foreach (var path in files.Paths.Where(ThemePieces.IsPiece))
        {
            var reading = new FileReading(files, path, memory);
            if (ThemePieces.Objection(path) is { } objection) findings.Add(objection);
            else if (reading.TryReadText(out var text)) pieces.Add(path[(ThemePieces.Folder.Length + 1)..], text);
            Keep(reading);
            commonFiles.Add(reading.Face);
        }

        return pieces.ToImmutable();
    }

    /// <summary>One error in the vehicle's file shall not become one for every page that names a variant.</summary>
    FrozenSet<NameKind> Unsure()
    {
        var broken = findings.ToSorted().Where(f => f.Severity == Severity.Error).Select(f => f.Span.Path).ToHashSet(StringComparer.Ordinal);
        NameKind[] ofVehicle = broken.Contains(VehicleFile) ? [NameKind.Variant, NameKind.System, NameKind.Setup] : [];
        NameKind[] ofHazards = broken.Contains(HazardsFile) ? [NameKind.Hazard] : [];
        return [.. ofVehicle, .. ofHazards];
    }

    void Keep(FileReading reading)
    {
        findings.AddRange(reading.Findings.ToSorted());
        references.AddRange(reading.References);
    }

    Digest CommonOf(GuideContent guide)
    {
        using var common = new Digester();
        common.Add(edition);
        foreach (var path in files.Paths) common.Add(path);
        foreach (var file in commonFiles) common.Add(file);
        foreach (var (_, picture) in guide.Pictures.OrderBy(p => p.Key, StringComparer.Ordinal)) common.Add(picture.Digest);
        return common.Take();
    }

    Digest FrameOf(Digest common)
    {
        using var frame = new Digester();
        frame.Add(common);
        foreach (var face in faces) frame.Add(face);
        return frame.Take();
    }

    FrozenDictionary<string, Hazard> WithOwn(ImmutableArray<KeyValuePair<Located<string>, Hazard>> own)
    {
        var all = new Dictionary<string, Hazard>(HazardBook.In(edition ?? language));
        foreach (var (slug, hazard) in own)
        {
            if (!all.TryAdd(slug.Value, hazard)) findings.Add(Rules.HazardBuiltIn.At(slug.Span, slug.Value));
        }

        return all.ToFrozenDictionary();
    }
}
