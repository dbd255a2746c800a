using System.CommandLine;
using Byrelaw.Cli.Loading;
using Byrelaw.Planning;
using Byrelaw.Reporting.Files;
using Byrelaw.Reporting.Plans;
using NodaTime;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw plan PROGRAMME</c>: dates, tasks, recipients, forecast and budget.</summary>
internal static class PlanCommand
{
    private const string DefaultOut = "out-plan";

    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var folder = new Option<string>("--out") { Description = $"The folder for the plan; without it: {DefaultOut}.", HelpName = "DIR", DefaultValueFactory = _ => DefaultOut };
        var today = Options.Date("--today", "The day of planning; without it the day that the records reach.");
        var knownOn = Options.KnownOn();
        var command = new Command("plan", "Plan a programme: calendar, tasks, recipients, forecast and budget.") { programme, folder, today, knownOn };
        command.SetAction(parsed => Run(
            parsed.GetValue(programme)!, parsed.GetValue(folder)!, parsed.GetValue(today), parsed.GetValue(knownOn), doors));
        return command;
    }

    private static int Run(string programme, string folder, LocalDate? today, LocalDate? knownOn, Doors doors)
    {
        if (folder.Length == 0)
        {
            throw new CannotDoException("--out wants the name of a folder");
        }

        ReportFolder.Check(doors.Full(folder));
        var problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, knownOn, doors, problems);
        if (loaded is null || loaded.Reading.HasErrors)
        {
            problems.Print(doors);
            doors.Err.WriteLine($"{problems.Counted()}. Nothing can be planned until the rule files are mended.");
            return ExitCode.Bad;
        }

        var plan = Planner.Of(loaded.Reading.Rulebook, loaded.Herd, today, knownOn);
        problems.Print(doors);
        ReportFolder.Write(doors.Full(folder), PlanReport.Of(plan));
        doors.Out.Write(PlanText.Of(plan));
        doors.Out.WriteLine($"\nThe whole plan: {doors.Show(doors.Full(folder))}/index.html; for the farmer: {doors.Show(doors.Full(folder))}/expectations.html");
        if (problems.All.Count > 0)
        {
            doors.Err.WriteLine($"{problems.Counted()}{(problems.Errors > 0 ? ". What they touch is in doubt, and doubt lets no animal through" : "")}.");
        }

        return problems.Errors > 0 ? ExitCode.Bad : ExitCode.Done;
    }
}
