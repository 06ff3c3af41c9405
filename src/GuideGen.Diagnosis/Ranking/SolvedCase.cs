namespace GuideGen.Diagnosis.Ranking;

/// <summary>A solved case as the ranking sees it. A cause that the model lacks counts as something else.</summary>
public sealed record SolvedCase(string Id, string Cause, Answers Answers);
