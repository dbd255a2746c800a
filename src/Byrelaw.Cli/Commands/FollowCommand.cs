using Byrelaw.Planning.Calendar;
using Byrelaw.Planning.Following;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Following;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw follow PROGRAMME</c>: every recipient's own dates after her transfer.</summary>
internal static class FollowCommand
{
    private const string DefaultOut = "out-follow";

    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var today = SharedOptions.Date("--today", "The day of looking; without it the day that the records reach.");
        var (knownOn, recordsTo, by, strict) = (SharedOptions.KnownOn(), SharedOptions.RecordsTo(), SharedOptions.By(), SharedOptions.Strict());
        var folder = new Option<string>("--out") { Description = $"The folder; without it: {DefaultOut}.", HelpName = "DIR", DefaultValueFactory = _ => DefaultOut };
        var command = new Command("follow", "Every recipient's own dates after her transfer: returns, checks, calving.") { programme, today, knownOn, recordsTo, by, folder, strict };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(folder)!.Length == 0)
            {
                throw new CannotDoException("--out wants the name of a folder");
            }

            var loaded = PlanCommand.Load(
                parsed.GetValue(programme)!, parsed.GetValue(today), parsed.GetValue(knownOn), SharedOptions.Reached(parsed.GetValue(recordsTo), doors), json: false, doors, out var problems);
            return loaded is null ? ExitCode.Bad
                : Write(loaded, parsed.GetValue(today) ?? loaded.Herd.KnownDay, parsed.GetValue(knownOn), parsed.GetValue(programme)!, parsed.GetValue(folder)!, parsed.GetValue(by), problems, doors with { IsStrict = parsed.GetValue(strict) });
        });
        return command;
    }

    private static int Write(LoadedProgramme loaded, LocalDate today, LocalDate? knownOn, string programme, string folder, string? by, Problems problems, Doors doors)
    {
        var (rulebook, herd) = (loaded.Reading.Rulebook, loaded.Herd);
        var list = ProgrammeLists.Recipients(rulebook.Programme!) ?? throw new CannotDoException("the programme draws up no list of recipients: nobody is followed");
        var judge = new Judge(rulebook, herd, knownOn);
        var draft = new Draft(rulebook, herd, knownOn, [judge.JudgeList(list, today, today)]);
        var report = new FollowReport(draft, today, Follower.Of(rulebook, herd, today), InCalfOnDay.Of(judge, list, today));
        var target = doors.Full(folder);
        FilesTogether.Write(target, [.. FollowFiles.Of(report)]);
        doors.Out.Write(FollowFiles.OnTerminal(report, doors.OutInk));
        doors.Out.WriteLine($"\nWritten into {doors.Show(target)}: follow.html and .md, follow.csv, and follow.ics for a calendar.");
        doors.Out.Write(LogOfJudging.Add(draft, "follow", programme, by, doors));
        return problems.Ends(doors);
    }
}
