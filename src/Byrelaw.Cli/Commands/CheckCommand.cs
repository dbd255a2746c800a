using System.CommandLine;
using Byrelaw.Checking.Trouble;
using Byrelaw.Cli.Loading;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Reporting.Json;
using Byrelaw.Reporting.Words;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw check FILE…</c>: reads rule files, reports every problem at once, and looks for trouble in rules that can be read.</summary>
internal static class CheckCommand
{
    public static Command Make(Doors doors)
    {
        var files = new Argument<string[]>("FILE") { Description = "Rule files.", Arity = ArgumentArity.OneOrMore };
        var format = Options.Format();
        var command = new Command("check", "Read rule files and report every problem at once.") { files, format };
        command.SetAction(parsed => Run(parsed.GetValue(files)!, parsed.GetValue(format) == "json", doors));
        return command;
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
                problems.Add(TroubleFinder.Find(reading.Rulebook));
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
