using Byrelaw.Judging.Promises;
using Byrelaw.Records.Doubts;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw records FOLDER</c>: says what is in the records and what is wrong with them.</summary>
internal static class RecordsCommand
{
    public static Command Make(Doors doors)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder with the farm's records: animals.csv and events.csv, or files of its own." };
        var rules = new Option<string?>("--rules") { Description = "The programme's file, which knows the words the records use; without it the one that names this folder, else the base words.", HelpName = "FILE" };
        var suggest = new Option<bool>("--suggest") { Description = "Write the `records` lines that read these files, to be put into the programme's file." };
        var promises = new Option<bool>("--promises") { Description = "Say which promises would open how much of each list, and what the records say to them." };
        var to = new Option<string?>("--to") { Description = "Write the records as they are read into this new or empty folder, as animals.csv and events.csv.", HelpName = "DIR" };
        var workbook = new Option<bool>("--workbook") { Description = "With --to: write one workbook with two sheets, herd.xlsx, in their place." };
        var (herd, recordsTo, format) = (SharedOptions.Herd(), SharedOptions.RecordsTo(), SharedOptions.Format());
        var command = new Command("records", "Say what is in the records and what is wrong with them.") { folder, rules, suggest, promises, herd, recordsTo, to, workbook, format };
        command.SetAction(parsed =>
        {
            var asked = new Asked(parsed.GetValue(suggest), parsed.GetValue(promises), new CopyTo(parsed.GetValue(to), parsed.GetValue(workbook)), parsed.GetValue(format) == "json") { RecordsTo = SharedOptions.Reached(parsed.GetValue(recordsTo), doors) };
            return Run(parsed.GetValue(folder)!, parsed.GetValue(rules), parsed.GetValue(herd), asked, doors);
        });
        return command;
    }

    private static int Run(string folder, string? rules, string? of, Asked asked, Doors doors)
    {
        var full = doors.Full(folder);
        if (!Directory.Exists(full))
        {
            throw new CannotDoException(File.Exists(full) ? $"{folder} is a file; give the folder of the records" : $"no such folder: {folder}");
        }

        asked.Copy.Check(doors);
        var programme = rules ?? ProgrammeOf.Records(full, doors.Folder);
        var reading = programme is null ? BaseWords.Read(doors) : LoadedProgramme.ReadRules(programme, knownOn: null, doors.Folder, doors.Today).ReachingTo(asked.RecordsTo);
        if (asked.Suggests)
        {
            doors.Out.Write(SuggestedRecords.Of(full, Path.GetFileName(Path.TrimEndingDirectorySeparator(full)), reading.Rulebook.Vocabulary, doors.Today, reading.Rulebook.Records?.Sources));
            return ExitCode.Done;
        }

        if (programme is null && !(File.Exists(Path.Combine(full, HerdReader.AnimalsFile)) && File.Exists(Path.Combine(full, HerdReader.EventsFile))))
        {
            throw new CannotDoException($"no programme's file in {doors.Show(full)} or above it has a line: records \"{Path.GetFileName(full)}\"; name the programme with --rules FILE, "
                + $"or let the program write the lines that read these files: byrelaw records {folder} --suggest");
        }

        if (asked.Weighs)
        {
            return PromisesWeighed.Say(reading.Rulebook, programme, full, of, asked.IsJson, doors);
        }

        var problems = new Problems();
        problems.Add(reading.Problems.Where(problem => problem.Severity == Severity.Error));
        var check = RecordsCheck.Read(full, doors.Show(full), reading.Rulebook.Vocabulary, reading.Rulebook.Records, herd: of);
        var herd = Believed.Of(reading.Rulebook, check.Herd);
        SharedOptions.SayRecordsTo(asked.RecordsTo, herd, doors);
        problems.Add(herd.Problems);
        problems.Add(check.Doubts);
        var causes = CausesTried.Of(herd, reading.Rulebook, full, of, doors);
        problems.BringTogether(causes);
        if (asked.IsJson)
        {
            doors.Out.WriteLine(JsonText.Of(problems.All, herd, causes));
        }
        else
        {
            problems.Print(doors);
            doors.Out.Write($"{doors.Show(full)}, read with the words of {(programme is null ? BaseWords.Shown : doors.Show(doors.Full(programme)))}\n\n{RecordsText.Of(herd, doors.OutInk)}");
            doors.Out.Write(string.Concat(OpenSheetWords.Of(herd).Select(line => line + "\n")));
            doors.Err.Write(problems.All.Count == 0 ? "" : $"{problems.Counted()}.\n");
        }

        if (asked.Copy.Folder is not null)
        {
            var read = HerdAsRead.Of(full, doors.Show(full), reading.Rulebook.Vocabulary, reading.Rulebook.Records, of);
            asked.Copy.Write(read, herd, reading.Rulebook.Records, asked.IsJson ? doors.Err : doors.Out, doors);
        }

        return problems.Errors > 0 || herd.LedgerIsBroken ? ExitCode.Bad : ExitCode.Done;
    }

    /// <summary>What is asked of the records.</summary>
    /// <param name="Suggests">Whether the lines that read them are to be written.</param>
    /// <param name="Weighs">Whether promises are to be weighed.</param>
    /// <param name="Copy">Where they are to be written as read.</param>
    /// <param name="IsJson">Whether a program reads it.</param>
    private sealed record Asked(bool Suggests, bool Weighs, CopyTo Copy, bool IsJson)
    {
        /// <summary>The day up to which a person says that everything is written down; null where nobody does.</summary>
        public LocalDate? RecordsTo { get; init; }
    }
}
