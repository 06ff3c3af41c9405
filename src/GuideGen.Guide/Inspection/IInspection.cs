using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;

namespace GuideGen.Guide.Inspection;

/// <summary>Looks at a guide for one matter. Inspections know nothing of each other, and run side by side.</summary>
public interface IInspection
{
    IEnumerable<Finding> Inspect(GuideContent guide);
}
