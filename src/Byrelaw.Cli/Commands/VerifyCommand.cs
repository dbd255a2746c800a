using Byrelaw.Planning.Sessions;
using Byrelaw.Reporting.Sheets;
using Byrelaw.Reporting.Verifying;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw verify REPORT</c>: judges a kept report's inputs again and says whether the answers are the same.</summary>
internal static class VerifyCommand
{
    public static Command Make(Doors doors)
    {
        var report = new Argument<string>("REPORT") { Description = "The folder of a draft, or a file in it." };
        var programme = new Option<string?>("--programme") { Description = "Where the programme's file is now, if it has moved.", HelpName = "FILE" };
        var rules = new Option<string?>("--rules") { Description = "Judge by the rules of this pack.", HelpName = "FILE.pack" };
        var format = SharedOptions.Format();
        var command = new Command("verify", "Judge what a kept report was drawn up from again, and say whether the answers are the same.") { report, programme, rules, format };
        command.SetAction(parsed => Run(parsed.GetValue(report)!, parsed.GetValue(programme), parsed.GetValue(rules), parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Run(string report, string? programme, string? rules, bool json, Doors doors)
    {
        var full = doors.Full(report);
        if (!Directory.Exists(full) && !File.Exists(full))
        {
            throw new CannotDoException($"no such file or folder: {report}");
        }

        var kept = KeptReport.Read(full)
            ?? throw new CannotDoException($"{report} does not say what it was drawn up from: it is no draft, or its draft.json is missing or from an older version");
        var inputs = kept.Draft.Inputs!;
        var file = programme is null ? InReport(kept, inputs.ProgrammeFile) : doors.Full(programme);
        var loaded = rules is null ? Programme(file, inputs, doors) : Packed(rules, kept, doors);
        if (loaded is null)
        {
            doors.Err.WriteLine("The rules cannot be read any more, so nothing can be judged again; byrelaw check says what is wrong with them.");
            return ExitCode.Bad;
        }

        var draft = SessionDraft.Of(loaded.Reading.Rulebook, loaded.Herd, Day(inputs.KnownOn), Day(inputs.On), inputs.Session);
        var verification = Verification.Of(kept, draft);
        doors.Out.Write(json ? VerifyJson.Of(verification) + "\n" : VerifyText.Of(verification) + InTheLog(kept, file, doors));
        doors.Err.Write(loaded.Herd.LedgerIsBroken ? OpenSheetWords.Broken + "\n" : "");
        return verification.Holds && !loaded.Herd.LedgerIsBroken ? ExitCode.Done : ExitCode.Bad;
    }

    private static string InReport(KeptReport kept, string path) => Path.GetFullPath(path.Replace('/', Path.DirectorySeparatorChar), kept.Folder);

    private static LocalDate? Day(string? day) => day is not null && LocalDatePattern.Iso.Parse(day) is { Success: true, Value: var date } ? date : null;

    private static LoadedProgramme? Programme(string file, InputsJson inputs, Doors doors) => RegularFile.Exists(file)
        ? LoadedProgramme.Read(file, Day(inputs.KnownOn), doors.Folder, _ => { }, doors.Today, inputs.Herd, Day(inputs.RecordsTo))
        : throw new CannotDoException($"{doors.Show(file)}, which the report was drawn up from, is not there; say with --programme FILE where it is now");

    /// <summary>The rules of a pack, and the records where the report says.</summary>
    private static LoadedProgramme? Packed(string rules, KeptReport kept, Doors doors)
    {
        var (pack, problem) = PackOnDisk.Read(rules, doors);
        problem ??= Packer.Check(pack!, JudgedWith.NameAndVersion);
        if (problem is not null)
        {
            throw new CannotDoException($"{rules} cannot be used: {problem.Found}; {problem.Mend}");
        }

        var knownOn = Day(kept.Draft.Inputs!.KnownOn);
        var reading = RulebookReader.Read(pack!.Opens, new PackedRuleFiles(pack), knownOn, doors.Today)!.ReachingTo(Day(kept.Draft.Inputs!.RecordsTo));
        if (reading.Rulebook is not { Programme: not null, Records: { } keeping })
        {
            throw new CannotDoException($"{rules} holds no programme to judge for");
        }

        var folder = InReport(kept, kept.Draft.Inputs!.RecordsFolder);
        return new LoadedProgramme(reading, RecordsFolder.Read(reading.Rulebook, folder, doors.Show(folder), knownOn, kept.Draft.Inputs!.Herd));
    }

    /// <summary>Whether the log beside the programme holds these answers by these rules and records.</summary>
    private static string InTheLog(KeptReport kept, string programme, Doors doors)
    {
        var (folder, draft) = (Path.GetDirectoryName(programme)!, kept.Draft);
        if (JudgingLog.Check(folder, JudgingLog.FileName) is not { } log)
        {
            return "";
        }

        var answers = AnswersDigest.Of(draft.Lists);
        var line = log.Entries.FirstOrDefault(entry => entry.Answers == answers && entry.Rulebook == draft.Rulebook && entry.Records == draft.Records);
        return line is null ? "The log of judging has no line with the answers of this report.\n"
            : $"The log of judging has these answers: number {line.Number}, {line.At}{(line.By is { } by ? $", by {PlainText.Clean(by)}" : "")}.\n";
    }
}
