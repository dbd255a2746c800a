using Byrelaw.Reporting.Pages;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw check FILE --practice</c>: what one farm does differently, on a page to be signed.</summary>
internal static class PracticeOfAFile
{
    public static int Write(string[] files, string? folder, Doors doors)
    {
        if (files is not [var file])
        {
            throw new CannotDoException("--practice is for one file: give the farm's own");
        }

        if (folder is not null)
        {
            ReportFolder.Check(doors.Full(folder));
        }

        var problems = new Problems();
        var reading = LoadedProgramme.ReadRules(file, knownOn: null, doors.Folder, doors.Today);
        problems.Add(reading.Problems);
        if (reading.HasErrors)
        {
            problems.Print(doors);
            doors.Err.WriteLine($"{problems.Counted()}. Nothing can be signed until they are mended.");
            return ExitCode.Bad;
        }

        problems.Print(doors);
        var page = LocalPracticePage.Of(reading.Rulebook, reading.Problems.Where(problem => problem.Code == "B0830").Select(problem => $"{problem.File} line {problem.Line}: {problem.Found}."));
        if (folder is not null)
        {
            ReportFolder.Write(doors.Full(folder), Report.Alone(page));
        }

        doors.Out.Write(folder is null ? page.ToMarkdown() : $"To be signed: {doors.Show(doors.Full(folder))}/local-practice.html\n");
        return ExitCode.Done;
    }
}
