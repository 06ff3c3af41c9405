namespace GuideGen.Guide;

/// <summary>
/// How much a guide may ask of whoever compiles or reads it: far above any honest page, and low enough that nobody's page
/// holds up a compile. What goes beyond is a finding of the rule that is named with each limit.
/// </summary>
public static class GuideLimits
{
    /// <summary>Of a page or a file of structured text; <c>file-too-large</c>.</summary>
    public const int TextBytes = 2 * 1024 * 1024;

    /// <summary>Levels of structured text in each other; <c>yaml-refused</c>.</summary>
    public const int YamlDepth = 16;

    /// <summary>Values in a piece of structured text; <c>yaml-refused</c>.</summary>
    public const int YamlNodes = 50_000;

    /// <summary>Characters of a name or a sentence in front matter; <c>value-type</c>.</summary>
    public const int LineLength = 2_000;

    /// <summary>Characters of a file's name without its ending; <c>slug-form</c>.</summary>
    public const int SlugLength = 80;

    /// <summary>Blanks and signs of quotes before the text of a line; <c>text-nesting</c>. Two or more of them open a level.</summary>
    public const int Indent = 200;

    /// <summary>Signs that may begin or end emphasis, a link, code or a tag, in a paragraph or a table; <c>text-marks</c>. To pair them takes the square of their number.</summary>
    public const int MarksInBlock = 2_000;

    /// <summary>The same signs in all of a page; <c>text-marks</c>.</summary>
    public const int MarksInPage = 20_000;

    /// <summary>Characters behind the marks of a page, to the end of the paragraph of each: how far the ends of links are looked for; <c>text-marks</c>.</summary>
    public const int ReachOfMarks = 200_000_000;

    /// <summary>Bars in a paragraph or a table; <c>text-marks</c>. With the next limit it bounds the cells of a table, of which every row has as many as the widest.</summary>
    public const int BarsInBlock = 5_000;

    /// <summary>Bars on a line; <c>text-marks</c>.</summary>
    public const int BarsInLine = 60;

    /// <summary>Names for addresses, <c>[name]: address</c>, and headings underlined with hyphens in a page; <c>text-marks</c>.</summary>
    public const int DefinitionsInPage = 1_000;

    /// <summary>Of a picture file, in MiB; <c>image-large</c>.</summary>
    public const int PictureMebibytes = 20;

    /// <summary>Of a photo, in millions of pixels; <c>image-large</c>.</summary>
    public const int PictureMegapixels = 60;

    /// <summary>Elements of a drawing in each other; <c>image-unsafe</c>.</summary>
    public const int DrawingDepth = 200;

    /// <summary>Elements that a browser draws for a drawing, each as often as it is used; <c>image-unsafe</c>.</summary>
    public const int DrawnElements = 200_000;

    /// <summary>Questions and checks on a walk through a tree: nobody stands beside a vehicle for more; <c>tree-deep</c>.</summary>
    public const int StepsOfWalk = 12;

    /// <summary>Pieces of a theme in each other; <c>theme-template</c>.</summary>
    public const int PieceDepth = 40;

    /// <summary>Turns of one loop in a template; <c>theme-template</c>.</summary>
    public const int TurnsOfLoop = 200_000;

    /// <summary>Turns of all loops of a page together, since loops in loops multiply; <c>theme-template</c>.</summary>
    public const int TurnsOfPage = 2_000_000;

    /// <summary>Characters that templates may write for one page, those of a template in another counted in both; <c>theme-template</c>.</summary>
    public const int CharactersOfPage = 16 * 1024 * 1024;
}
