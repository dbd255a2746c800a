using Byrelaw.Judging.Promises;
using Byrelaw.Records.Doubts;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw records FOLDER</c>: says what is in the records and what is wrong with them.</summary>
internal static class RecordsCommand
{
    public static Command Make(Doors doors)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder with animals.csv and events.csv." };
        var rules = new Option<string?>("--rules") { Description = "The programme's file, which knows the words the records use.", HelpName = "FILE" };
        var format = SharedOptions.Format();
        var command = new Command("records", "Say what is in the records and what is wrong with them.") { folder, rules, format };
        command.SetAction(parsed => Run(parsed.GetValue(folder)!, parsed.GetValue(rules), parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Run(string folder, string? rules, bool json, Doors doors)
    {
        var full = doors.Full(folder);
        if (!Directory.Exists(full))
        {
            throw new CannotDoException(File.Exists(full) ? $"{folder} is a file; give the folder of the records" : $"no such folder: {folder}");
        }

        var programme = rules ?? ProgrammeOf.Records(full, doors.Folder);
        var reading = LoadedProgramme.ReadRules(programme, knownOn: null, doors.Folder, doors.Today);
        var problems = new Problems();
        problems.Add(reading.Problems.Where(problem => problem.Severity == Severity.Error));
        var check = RecordsCheck.Read(full, doors.Show(full), reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        var herd = Believed.Of(reading.Rulebook, check.Herd);
        problems.Add(herd.Problems);
        problems.Add(check.Doubts);
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(problems.All, herd));
        }
        else
        {
            problems.Print(doors);
            doors.Out.Write($"{doors.Show(full)}, read with the words of {doors.Show(doors.Full(programme))}\n\n{RecordsText.Of(herd, doors.OutInk)}");
            doors.Err.Write(problems.All.Count == 0 ? "" : $"{problems.Counted()}.\n");
        }

        return problems.Errors > 0 ? ExitCode.Bad : ExitCode.Done;
    }
}
