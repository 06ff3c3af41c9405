using GuideGen.Codes;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Guide.Inspection;

/// <summary>Codes given as values have an owner and a meaning (SAE J2012 / ISO 15031-6).</summary>
sealed class CodeInspection : IInspection
{
    public IEnumerable<Finding> Inspect(GuideContent guide) =>
        CodeUses.InValues(guide).SelectMany(c => Inspect(guide, c));

    /// <summary>One finding at most: the first thing that is odd about a possible code.</summary>
    internal static IEnumerable<Finding> Inspect(GuideContent guide, Located<TroubleCode> code)
    {
        var name = code.Value.ToString();
        var isExplained = guide.Slugs[ContentKind.Code].Contains(name);
        Rule? rule = code.Value.Owner switch
        {
            _ when isExplained || code.Value.IsEmptySlot => null,
            CodeOwner.Reserved => Rules.CodeReserved,
            CodeOwner.Maker => Rules.CodeMakerUnexplained,
            CodeOwner.IsoSae when CodeCatalogue.Find(code.Value) is null => Rules.CodeUnassigned,
            _ => null,
        };
        return rule is null ? [] : [rule.At(code.Span, name).Concerning(name)];
    }
}
