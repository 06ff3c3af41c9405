namespace GuideGen.Codes.Reading;

/// <summary>A code found among the runs of a line; positions are those of the folded text.</summary>
/// <param name="FirstRun">The first run it takes up.</param>
/// <param name="LastRun">The last run it takes up.</param>
readonly record struct CodeMatch(ReportedCode Reported, int Start, int End, int FirstRun, int LastRun, Certainty Certainty);
