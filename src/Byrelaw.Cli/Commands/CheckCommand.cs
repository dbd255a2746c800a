using System.CommandLine;
using Byrelaw.Cli.Loading;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Reporting.Files;
using Byrelaw.Reporting.Json;
using Byrelaw.Reporting.Pages;
using Byrelaw.Reporting.Words;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw check FILE…</c>: reads rule files and reports every problem at once.</summary>
internal static class CheckCommand
{
    public static Command Make(Doors doors)
    {
        var files = new Argument<string[]>("FILE") { Description = "Rule files.", Arity = ArgumentArity.OneOrMore };
        var practice = new Option<bool>("--practice") { Description = "Of one file: write what is done differently from the rules used, on a page to be signed." };
        var folder = new Option<string?>("--out") { Description = "With --practice: a folder for that page (Markdown and HTML).", HelpName = "DIR" };
        var format = Options.Format();
        var command = new Command("check", "Read rule files and report every problem at once.") { files, practice, folder, format };
        command.SetAction(parsed => parsed.GetValue(practice)
            ? Practice(parsed.GetValue(files)!, parsed.GetValue(folder), doors)
            : Run(parsed.GetValue(files)!, parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Practice(string[] files, string? folder, Doors doors)
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
        var reading = LoadedProgramme.ReadRules(file, knownOn: null, doors);
        problems.Add(reading.Problems);
        if (reading.HasErrors)
        {
            Say(problems, [], json: false, doors);
            return ExitCode.Bad;
        }

        problems.Print(doors);
        var page = LocalPracticePage.Of(reading.Rulebook);
        if (folder is not null)
        {
            ReportFolder.Write(doors.Full(folder), Report.Both(page));
        }

        doors.Out.Write(folder is null ? page.ToMarkdown() : $"To be signed: {doors.Show(doors.Full(folder))}/local-practice.html\n");
        return ExitCode.Done;
    }

    private static int Run(string[] files, bool json, Doors doors)
    {
        var problems = new Problems();
        var said = new List<string>();
        var missing = new List<string>();
        foreach (var file in files)
        {
            try
            {
                var reading = LoadedProgramme.ReadRules(file, knownOn: null, doors);
                problems.Add(reading.Problems);
                said.Add($"{PlainText.Clean(file)}: {Contents(reading.Rulebook)}, {(reading.HasErrors ? "with errors" : "no errors")}");
            }
            catch (Exception exception) when (exception is CannotDoException or IOException or UnauthorizedAccessException)
            {
                missing.Add(exception.Message);
            }
        }

        Say(problems, said, json, doors);
        missing.ForEach(message => doors.Err.WriteLine($"byrelaw: {PlainText.Clean(message)}"));
        return missing.Count > 0 ? ExitCode.CouldNot : problems.Errors > 0 ? ExitCode.Bad : ExitCode.Done;
    }

    private static void Say(Problems problems, List<string> said, bool json, Doors doors)
    {
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(problems.All));
            return;
        }

        problems.Print(doors);
        said.ForEach(doors.Out.WriteLine);
        if (problems.Errors > 0)
        {
            doors.Err.WriteLine($"{problems.Counted()}. Nobody can be judged until they are mended: a broken rule lets no animal through.");
        }
        else if (problems.Warnings > 0)
        {
            doors.Err.WriteLine($"{problems.Counted()}.");
        }
    }

    private static string Contents(Rulebook rulebook)
    {
        var lists = rulebook.Rules.GroupBy(rule => rule.List).Select(list => $"{Numbers.Count(list.Count(), "rule", "rules")} for {PlainText.Clean(list.Key)}").ToList();
        return lists.Count == 0 ? "no rules" : Phrases.And(lists);
    }
}
