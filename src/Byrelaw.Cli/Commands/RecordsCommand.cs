using Byrelaw.Judging.Promises;
using Byrelaw.Records.Doubts;

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
        var format = SharedOptions.Format();
        var command = new Command("records", "Say what is in the records and what is wrong with them.") { folder, rules, suggest, promises, format };
        command.SetAction(parsed => Run(parsed.GetValue(folder)!, parsed.GetValue(rules), parsed.GetValue(suggest), parsed.GetValue(promises), parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Run(string folder, string? rules, bool suggests, bool weighs, bool json, Doors doors)
    {
        var full = doors.Full(folder);
        if (!Directory.Exists(full))
        {
            throw new CannotDoException(File.Exists(full) ? $"{folder} is a file; give the folder of the records" : $"no such folder: {folder}");
        }

        var programme = rules ?? ProgrammeOf.Records(full, doors.Folder);
        var reading = programme is null ? BaseWords.Read(doors) : LoadedProgramme.ReadRules(programme, knownOn: null, doors.Folder, doors.Today);
        if (suggests)
        {
            doors.Out.Write(SuggestedRecords.Of(full, Path.GetFileName(Path.TrimEndingDirectorySeparator(full)), reading.Rulebook.Vocabulary, doors.Today));
            return ExitCode.Done;
        }

        if (programme is null && !File.Exists(Path.Combine(full, HerdReader.AnimalsFile)))
        {
            throw new CannotDoException($"no programme's file in {doors.Show(full)} or above it has a line: records \"{Path.GetFileName(full)}\"; name the programme with --rules FILE, "
                + $"or let the program write the lines that read these files: byrelaw records {folder} --suggest");
        }

        if (weighs)
        {
            return PromisesWeighed.Say(reading.Rulebook, programme, full, json, doors);
        }

        var problems = new Problems();
        problems.Add(reading.Problems.Where(problem => problem.Severity == Severity.Error));
        var check = RecordsCheck.Read(full, doors.Show(full), reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        var herd = Believed.Of(reading.Rulebook, check.Herd);
        problems.Add(herd.Problems);
        problems.Add(check.Doubts);
        var causes = CausesTried.Of(herd, reading.Rulebook, full, doors);
        problems.BringTogether(causes);
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(problems.All, herd, causes));
        }
        else
        {
            problems.Print(doors);
            doors.Out.Write($"{doors.Show(full)}, read with the words of {(programme is null ? BaseWords.Shown : doors.Show(doors.Full(programme)))}\n\n{RecordsText.Of(herd, doors.OutInk)}");
            doors.Err.Write(problems.All.Count == 0 ? "" : $"{problems.Counted()}.\n");
        }

        return problems.Errors > 0 ? ExitCode.Bad : ExitCode.Done;
    }
}
