using GuideGen.Guide.Model;

namespace GuideGen.Guide.Links;

/// <summary>Where a link leads.</summary>
public abstract record LinkTarget;

/// <param name="Anchor">A heading or a step; empty for the top.</param>
public sealed record EntryTarget(IGuideEntry Entry, string Anchor) : LinkTarget;

/// <param name="Path">Relative to content/.</param>
public sealed record AssetTarget(string Path) : LinkTarget;

/// <summary>A page that is there but has errors of its own; such a guide is not rendered.</summary>
public sealed record UnreadTarget : LinkTarget;

public sealed record OutsideTarget(string Address) : LinkTarget;

public sealed record ForbiddenTarget : LinkTarget;

/// <param name="Path">The file that was meant, relative to the guide's folder; empty if none can be told.</param>
public sealed record BrokenTarget(string Why, string Path) : LinkTarget;
