using Byrelaw.Planning;
using Byrelaw.Planning.Calendar;
using Byrelaw.Planning.Sessions;
using Byrelaw.Planning.Slipping;
using Byrelaw.Reporting.Causes;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw plan PROGRAMME</c>: dates, tasks, recipients, forecast and budget.</summary>
internal static class PlanCommand
{
    private const string DefaultOut = "out-plan";

    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var folder = new Option<string>("--out") { Description = $"The folder for the plan; without it: {DefaultOut}.", HelpName = "DIR", DefaultValueFactory = _ => DefaultOut };
        var today = SharedOptions.Date("--today", "The day of planning; without it the day that the records reach.");
        var (knownOn, recordsTo, herd, by, strict) = (SharedOptions.KnownOn(), SharedOptions.RecordsTo(), SharedOptions.Herd(), SharedOptions.By(), SharedOptions.Strict());
        var slip = new Option<string?>("--slip") { Description = $"Say what is left when something goes wrong: {SlipPhrase.Forms}. Nothing is written.", HelpName = "WHAT" };
        var session = new Option<int?>("--session") { Description = "Only this session, from 1: who, and what is to be done; with --slip which one goes wrong.", HelpName = "N" };
        var heard = SharedOptions.Date("--heard-on", "With --slip: the day on which you learn of it; without it the day it should have happened.");
        var format = SharedOptions.Format();
        var sheet = SharedOptions.Date("--sheet", "Write the sheets of this morning, today's or tomorrow's: numbered, with boxes, and rows to fill in for byrelaw record.");
        var rehearse = SharedOptions.Date("--rehearse", "Draw the sheets of this day as if today were it: marked REHEARSAL, and in no ledger.");
        var command = new Command("plan", "Plan a programme: calendar, tasks, recipients, forecast and budget.") { programme, folder, today, knownOn, recordsTo, herd, by, strict, slip, session, heard, sheet, rehearse, format };
        command.SetAction(parsed =>
        {
            if ((parsed.GetValue(rehearse) ?? parsed.GetValue(sheet)) is { } morning)
            {
                var asked = new MorningAskedFor(parsed.GetValue(programme)!, morning, parsed.GetValue(rehearse) is not null)
                {
                    Out = parsed.GetResult(folder) is { Implicit: false } ? parsed.GetValue(folder)! : MorningAskedFor.DefaultOut,
                    RecordsTo = SharedOptions.Reached(parsed.GetValue(recordsTo), parsed.GetValue(rehearse) > doors.Today ? doors with { Clock = new DayClock(morning) } : doors),
                    By = parsed.GetValue(by),
                    Besides = [.. new (string Name, bool IsGiven)[]
                    {
                        ("--sheet with --rehearse", parsed.GetValue(sheet) is not null && parsed.GetValue(rehearse) is not null), ("--today", parsed.GetValue(today) is not null),
                        ("--known-on", parsed.GetValue(knownOn) is not null), ("--herd", parsed.GetValue(herd) is not null), ("--slip", parsed.GetValue(slip) is not null), ("--heard-on", parsed.GetValue(heard) is not null), ("--session", parsed.GetValue(session) is not null), ("--format json", parsed.GetValue(format) == "json"),
                    }.Where(one => one.IsGiven).Select(one => one.Name)],
                };
                return SheetsOfAMorning.Write(asked, doors with { IsStrict = parsed.GetValue(strict) });
            }

            var day = parsed.GetValue(today);
            var loaded = Load(parsed.GetValue(programme)!, day, parsed.GetValue(knownOn), SharedOptions.Reached(parsed.GetValue(recordsTo), doors), parsed.GetValue(format) == "json", doors, out var problems, herd: parsed.GetValue(herd));
            return loaded is null ? ExitCode.Bad
                : parsed.GetValue(slip) is { } words ? SayWhatIsLeft(Planner.Days(loaded.Reading.Rulebook, loaded.Herd, day), words, parsed.GetValue(session) ?? 1, parsed.GetValue(heard), doors)
                : Write(
                    Only(Planner.Plan(loaded.Reading.Rulebook, loaded.Herd, day, parsed.GetValue(knownOn)), parsed.GetValue(session)), parsed.GetValue(programme)!, parsed.GetValue(format) == "json" ? null : parsed.GetValue(folder)!, parsed.GetValue(by), problems,
                    doors with { IsStrict = parsed.GetValue(strict) });
        });
        return command;
    }

    internal static LoadedProgramme? Load(string programme, LocalDate? today, LocalDate? knownOn, LocalDate? recordsTo, bool json, Doors doors, out Problems problems, SheetsDrawn? drawing = null, string? herd = null)
    {
        problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, knownOn, doors.Folder, problems.Add, doors.Today, herd, recordsTo, drawing);
        problems.LedgerIsBroken = loaded?.Herd.LedgerIsBroken == true;
        problems.BringTogether(ProblemCauses.Sorted(loaded is null ? [] : ProblemCauses.Of(loaded.Herd)));
        problems.Add(loaded is null ? [] : UnknownAnimals.Booked(loaded.Reading.Rulebook, loaded.Herd).Concat(UnknownAnimals.Assumed(loaded.Reading.Rulebook, loaded.Herd))
            .Concat(UnknownAnimals.Waived(loaded.Reading.Rulebook, loaded.Herd)).Concat(UnknownMobs.In(loaded.Reading.Rulebook, loaded.Herd)));
        problems.Print(doors);
        if (loaded is null || loaded.Reading.HasErrors)
        {
            if (json)
            {
                doors.Out.WriteLine(JsonText.Of(problems.All));
            }

            doors.Err.WriteLine($"{problems.Counted()}. Nothing can be planned until the rule files are mended.");
            return null;
        }

        if (today is null && !loaded.Herd.ReachesADay)
        {
            throw new CannotDoException("no record with a date could be read, so nobody knows what day it is; say it with --today, or write `up to` a day under `records`");
        }

        SharedOptions.SayRecordsTo(recordsTo, loaded.Herd, doors);
        return loaded;
    }

    /// <summary>All sessions, or the one that is asked for.</summary>
    private static Plan Only(Plan plan, int? session) => session is not { } number ? plan
        : OneSession.Of(plan, number) ?? throw new CannotDoException(plan.Calendar.Sessions.Any(one => one.Number == number)
            ? $"session {number} is over, or nobody is named for it: the programme draws up no list of recipients"
            : $"the plan has {Numbers.Count(plan.Calendar.Sessions.Length, "session", "sessions")}; there is no session {number}");

    private static int Write(Plan plan, string programme, string? folder, string? by, Problems problems, Doors doors)
    {
        if (folder is null)
        {
            LogOfJudging.Add(plan.Draft, "plan", programme, by, doors);
            doors.Out.WriteLine(PlanJsonText.Of(plan));
            return problems.Ends(doors);
        }

        if (folder.Length == 0)
        {
            throw new CannotDoException("--out wants the name of a folder");
        }

        var target = doors.Full(folder);
        ReportFolder.Check(target);
        var logged = LogOfJudging.Add(plan.Draft, "plan", programme, by, doors);
        KeptNotes.Say(ReportFolder.Write(target, PlanReport.Of(plan)), target, doors);
        doors.Out.Write(PlanSummaryText.Of(plan));
        doors.Out.WriteLine($"\nThe whole plan: {doors.Show(target)}/index.html; for the farmer: {doors.Show(target)}/expectations.html; for each morning: {doors.Show(target)}/sheets; for a calendar: {doors.Show(target)}/calendar.ics");
        doors.Out.Write(logged);
        if (problems.All.Count > 0)
        {
            doors.Err.WriteLine($"{problems.Counted()}{(problems.Errors > 0 ? ". What they touch is in doubt, and doubt lets no animal through" : "")}.");
        }

        return problems.Ends(doors);
    }

    private static int SayWhatIsLeft((Rulebook Rulebook, PlanCalendar Calendar) planned, string words, int session, LocalDate? heardOn, Doors doors)
    {
        var (rulebook, calendar) = planned;
        if (session < 1 || session > calendar.Sessions.Length)
        {
            throw new CannotDoException($"the plan has {Numbers.Count(calendar.Sessions.Length, "session", "sessions")}; there is no session {session}");
        }

        var slip = SlipPhrase.Read(words, calendar, rulebook.Plans, session, heardOn)
            ?? throw new CannotDoException($"--slip does not understand `{words}`; it wants {SlipPhrase.Forms}, with a method and a day that the plan has");
        doors.Out.Write(SlipText.Of(Slipper.Slip(rulebook, calendar, slip)!));
        return ExitCode.Done;
    }
}
