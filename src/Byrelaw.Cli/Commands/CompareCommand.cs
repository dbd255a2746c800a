using Byrelaw.Checking.Comparing;
using Byrelaw.Judging.Comparing;
using Byrelaw.Reporting.Causes;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw compare OLD NEW</c>: what changed between two rulebooks, and which animals feel it.</summary>
internal static class CompareCommand
{
    public static Command Make(Doors doors)
    {
        var old = new Argument<string>("OLD") { Description = "A rule file or programme's file, as it was." };
        var @new = new Argument<string>("NEW") { Description = "The same, or another, as it is." };
        var records = new Option<string?>("--records") { Description = "The folder with animals.csv and events.csv: judge every animal by both, and say which change makes which difference.", HelpName = "FOLDER" };
        var folder = new Option<string?>("--out") { Description = "A folder for the comparison as a page (Markdown and HTML).", HelpName = "DIR" };
        var (knownOn, herd, strict, format) = (SharedOptions.KnownOn(), SharedOptions.Herd(), SharedOptions.Strict(), SharedOptions.Format());
        var command = new Command("compare", "Say what differs between two rulebooks, rule by rule, and which animals feel it.") { old, @new, records, herd, knownOn, folder, strict, format };
        command.SetAction(parsed => Run(
            parsed.GetValue(old)!, parsed.GetValue(@new)!, parsed.GetValue(records), parsed.GetValue(herd), parsed.GetValue(knownOn), parsed.GetValue(folder), parsed.GetValue(format) == "json",
            doors with { IsStrict = parsed.GetValue(strict) }));
        return command;
    }

    private static int Run(string oldFile, string newFile, string? records, string? herdName, LocalDate? knownOn, string? folder, bool json, Doors doors)
    {
        if (folder is "")
        {
            throw new CannotDoException("--out wants the name of a folder");
        }

        if (herdName is not null && records is null)
        {
            throw new CannotDoException("--herd says which herd of the records; it wants --records FOLDER");
        }

        if (folder is { } target)
        {
            ReportFolder.Check(doors.Full(target));
        }

        var problems = new Problems();
        var (old, @new) = (LoadedProgramme.ReadRules(oldFile, knownOn, doors.Folder, doors.Today), LoadedProgramme.ReadRules(newFile, knownOn, doors.Folder, doors.Today));
        problems.Add(old.Problems);
        problems.Add(@new.Problems);
        if (problems.Errors > 0)
        {
            return NotCompared(problems, json, doors);
        }

        var between = RulebookComparison.Of(old.Rulebook, @new.Rulebook);
        var herd = records is null ? null : Judge(between, records, herdName, knownOn, problems, doors);
        var report = new ComparisonReport(doors.Show(doors.Full(oldFile)), doors.Show(doors.Full(newFile)), between, herd)
        {
            MadeUp = records is null ? BoundaryAnimals.Of(between) : [],
        };
        if (folder is not null)
        {
            ReportFolder.Write(doors.Full(folder), Report.Alone(ComparePage.Of(report)));
        }

        doors.Out.Write(json ? CompareJson.Of(report) + "\n" : CompareText.Of(report, doors.OutInk)
            + (folder is null ? "" : $"\nAs a page: {doors.Show(doors.Full(folder))}/compare.html\n"));
        return problems.TellErrorsInRecords(doors);
    }

    private static HerdComparison Judge(RulebookComparison between, string records, string? herdName, LocalDate? knownOn, Problems problems, Doors doors)
    {
        if (between.Old.Programme is null && between.New.Programme is null)
        {
            throw new CannotDoException("neither file has a programme, so there is no day to judge for; give a programme's file for OLD or NEW, or leave out --records");
        }

        using var bar = new ProgressBar(doors, "Judging by each change");
        var (folder, done, of) = (doors.Full(records), 0, (2 * Change.Of(between).Length) + 1);
        var herd = HerdComparer.Compare(
            between, rulebook => RecordsFolder.Read(rulebook, folder, doors.Show(folder), knownOn, herdName),
            () => bar.Report((Math.Min(++done, of), of)), knownOn);
        problems.Add(herd.New.Herd.Problems);
        problems.BringTogether(ProblemCauses.Sorted(ProblemCauses.Of(herd.New.Herd)));
        return herd;
    }

    private static int NotCompared(Problems problems, bool json, Doors doors)
    {
        problems.Print(doors);
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(problems.All));
        }

        doors.Err.WriteLine($"{problems.Counted()}. Two rulebooks are compared once both can be read: a broken rule says nothing that could be set beside another.");
        return ExitCode.Bad;
    }
}
