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
        var to = new Option<string?>("--to") { Description = "Write the records as they are read into this new or empty folder, as animals.csv and events.csv.", HelpName = "DIR" };
        var workbook = new Option<bool>("--workbook") { Description = "With --to: write one workbook with two sheets, herd.xlsx, in their place." };
        var (herd, format) = (SharedOptions.Herd(), SharedOptions.Format());
        var command = new Command("records", "Say what is in the records and what is wrong with them.") { folder, rules, herd, to, workbook, format };
        command.SetAction(parsed =>
        {
            var copy = new CopyTo(parsed.GetValue(to), parsed.GetValue(workbook));
            return Run(parsed.GetValue(folder)!, parsed.GetValue(rules), parsed.GetValue(herd), copy, parsed.GetValue(format) == "json", doors);
        });
        return command;
    }

    private static int Run(string folder, string? rules, string? of, CopyTo copy, bool json, Doors doors)
    {
        var full = doors.Full(folder);
        if (!Directory.Exists(full))
        {
            throw new CannotDoException(File.Exists(full) ? $"{folder} is a file; give the folder of the records" : $"no such folder: {folder}");
        }

        copy.Check(doors);
        var programme = rules ?? ProgrammeOf.Records(full, doors.Folder);
        var reading = LoadedProgramme.ReadRules(programme, knownOn: null, doors.Folder, doors.Today);
        var problems = new Problems();
        problems.Add(reading.Problems.Where(problem => problem.Severity == Severity.Error));
        var check = RecordsCheck.Read(full, doors.Show(full), reading.Rulebook.Vocabulary, reading.Rulebook.Records, herd: of);
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

        if (copy.Folder is not null)
        {
            var read = HerdAsRead.Of(full, doors.Show(full), reading.Rulebook.Vocabulary, reading.Rulebook.Records, of);
            copy.Write(read, herd, reading.Rulebook.Records, json ? doors.Err : doors.Out, doors);
        }

        return problems.Errors > 0 ? ExitCode.Bad : ExitCode.Done;
    }
}
