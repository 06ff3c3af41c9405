using GuideGen.Site.Drafting;

namespace GuideGen.Commands;

/// <summary>Takes a case that an owner sent into the guide, and says where it went or what is wrong with it.</summary>
sealed class CaseFiling(Terminal terminal, string folder, string currentFolder)
{
    /// <param name="from">The owner's file.</param>
    /// <returns>An exit code.</returns>
    public int File(string from)
    {
        var sent = Path.GetFullPath(from, currentFolder);
        if (!System.IO.File.Exists(sent))
        {
            terminal.Error.WriteLine($"guidegen: there is no file {sent}. Name the file that the owner sent.");
            return ExitCode.WrongUsage;
        }

        var taken = CaseIntake.File(folder, System.IO.File.ReadAllBytes(sent));
        var report = new FindingReport(terminal, OutputFormat.Text, "");
        report.Write(taken.Path is null ? [.. taken.In(from)] : taken.Findings);
        report.Say(taken.Path is not null
            ? $"{taken.Path} is part of the guide now. Read it through before it is published."
            : $"Nothing was filed. Mend {from} and file it again.");
        return taken.Path is null ? ExitCode.Findings : FindingReport.ExitCodeOf(taken.Findings);
    }
}
