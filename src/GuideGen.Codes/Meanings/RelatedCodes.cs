using System.Collections.Immutable;

namespace GuideGen.Codes;

/// <param name="SameSubject">Other conditions of the very same subject on the same sides.</param>
/// <param name="SameCondition">The same condition of a like subject on other sides, such as the other bank.</param>
/// <param name="Neighbours">The codes listed just before and after it within its group.</param>
public sealed record RelatedCodes(
    ImmutableArray<TroubleCode> SameSubject, ImmutableArray<TroubleCode> SameCondition, ImmutableArray<TroubleCode> Neighbours);
