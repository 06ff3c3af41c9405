using GuideGen.Guide.Findings;

namespace GuideGen.Site.Pictures;

/// <summary>A picture that turns out not to be usable only when it is drawn; the author's, not ours.</summary>
public sealed class PictureException(Finding finding) : IOException($"{finding.Span.Path}: {finding.Message}")
{
    public Finding Finding { get; } = finding;
}
