namespace Byrelaw.Cli.Commands;

/// <summary>
/// <c>byrelaw check FILE…</c>: reads rule files, tries their worked examples, looks for trouble in rules that can be read, and reports every
/// problem at once; with <c>--explain</c>, teaches one.
/// </summary>
internal static class CheckCommand
{
    public static Command Make(Doors doors)
    {
        var files = new Argument<string[]>("FILE") { Description = "Rule files.", Arity = ArgumentArity.ZeroOrMore };
        var coverage = new Option<bool>("--coverage") { Description = "Say what of each rule no worked example shows." };
        var practice = new Option<bool>("--practice") { Description = "Of one file: write what is done differently from the rules used, on a page to be signed." };
        var folder = new Option<string?>("--out") { Description = "With --practice: a folder for that page (Markdown and HTML).", HelpName = "DIR" };
        var explain = new Option<string>("--explain") { Description = "Say what a problem means, with an example and its mend; no FILE is read.", HelpName = "CODE" };
        var hash = new Option<string?>("--log-hash") { Description = "A hash of the log of judging that you noted: say whether its line is still there.", HelpName = "SHA256" };
        var format = SharedOptions.Format();
        var command = new Command("check", "Read rule files, try their worked examples and report every problem at once.") { files, coverage, practice, folder, hash, format, explain };
        command.Validators.Add(parsed =>
        {
            if (parsed.GetResult(explain) is null && parsed.GetValue(files) is not { Length: > 0 })
            {
                parsed.AddError("check wants a FILE to read, or --explain and the code of a problem");
            }
        });
        command.SetAction(parsed => parsed.GetValue(explain) is { } code ? Explanation.Print(code, doors)
            : parsed.GetValue(practice) ? PracticeOfAFile.Write(parsed.GetValue(files)!, parsed.GetValue(folder), doors)
            : Run(parsed.GetValue(files)!, parsed.GetValue(coverage), parsed.GetValue(hash), parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Run(string[] files, bool wantsCoverage, string? keptHash, bool json, Doors doors)
    {
        var checkedFiles = new CheckedFiles(doors, keptHash);
        foreach (var file in files)
        {
            checkedFiles.Check(file);
        }

        var coverage = wantsCoverage ? checkedFiles.Coverage() : [];
        if (json)
        {
            doors.Out.WriteLine(wantsCoverage ? JsonText.Of(checkedFiles.Problems.All, coverage) : JsonText.Of(checkedFiles.Problems.All));
        }
        else
        {
            Say(checkedFiles, doors);
            if (wantsCoverage)
            {
                doors.Out.Write(CoverageText.Of(coverage));
            }
        }

        checkedFiles.Missing.ForEach(message => doors.Err.WriteLine($"byrelaw: {PlainText.Clean(message)}"));
        return checkedFiles.Missing.Count > 0 ? ExitCode.CouldNot : checkedFiles.Problems.Errors > 0 ? ExitCode.Bad : ExitCode.Done;
    }

    private static void Say(CheckedFiles files, Doors doors)
    {
        var problems = files.Problems;
        problems.Print(doors);
        files.Said.ForEach(doors.Out.WriteLine);
        if (files.NobodyCanBeJudged)
        {
            doors.Err.WriteLine($"{problems.Counted()}. Nobody can be judged until they are mended: a broken rule lets no animal through.");
        }
        else if (files.HasErrors)
        {
            doors.Err.WriteLine($"{problems.Counted()}. The rules can be read, and animals are judged by them; what the errors touch is in doubt until it is mended.");
        }
        else if (problems.Errors > 0)
        {
            var log = problems.All.Any(problem => problem.Severity == Severity.Error && LogOfJudging.Owns(problem));
            var examples = problems.All.Any(problem => problem.Severity == Severity.Error && !LogOfJudging.Owns(problem));
            doors.Err.WriteLine($"{problems.Counted()}. The rules can be read{(examples ? "; they do not say what the examples expect of them" : "")}{(log ? "; the log of judging is not as it was written" : "")}.");
        }
        else if (problems.Warnings > 0)
        {
            doors.Err.WriteLine($"{problems.Counted()}.");
        }
    }
}
