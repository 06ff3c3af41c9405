using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Looks at a guide for one matter, without the running text of its pages. Inspections know nothing of each other, and run side by side.</summary>
interface IInspection
{
    /// <remarks>What is found follows from the guide's frame.</remarks>
    IEnumerable<Finding> Inspect(GuideContent guide);
}

/// <summary>Looks at single pages, text and all, for one matter.</summary>
interface IPageInspection
{
    /// <returns>Looks at one page. What is found follows from that page and <see cref="GuideInspector.BasisOfPages"/>.</returns>
    Func<IGuideEntry, IEnumerable<Finding>> For(GuideContent guide);
}
