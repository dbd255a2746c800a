using Byrelaw.Judging.Tuning;
using Byrelaw.Reporting.Causes;
using Byrelaw.Reporting.Tuning;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw tune PROGRAMME RULE</c>: what each value of a rule's numbers would let in.</summary>
internal static class TuneCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var rule = new Argument<string>("RULE") { Description = "The rule's name." };
        var with = new Option<string?>("--with") { Description = "Another rule: how many may be used for values of both at once. The same rule, for two numbers of one.", HelpName = "RULE2" };
        var list = new Option<string?>("--list") { Description = "Count the animals of this list; without it, of the rule's own.", HelpName = "LIST" };
        var folder = new Option<string?>("--out") { Description = "A folder for the page (Markdown, and HTML with a picture).", HelpName = "DIR" };
        var (herd, strict, format) = (SharedOptions.Herd(), SharedOptions.Strict(), SharedOptions.Format());
        var command = new Command("tune", "Say how many animals each value of a rule's numbers lets in, and which.") { programme, rule, with, list, folder, herd, strict, format };
        command.SetAction(parsed => Run(
            parsed.GetValue(programme)!, (parsed.GetValue(rule)!, parsed.GetValue(with), parsed.GetValue(list)), parsed.GetValue(folder), parsed.GetValue(herd), parsed.GetValue(format) == "json",
            doors with { IsStrict = parsed.GetValue(strict) }));
        return command;
    }

    private static int Run(string programme, (string Rule, string? With, string? List) asked, string? folder, string? herd, bool json, Doors doors)
    {
        if (folder is "")
        {
            throw new CannotDoException("--out wants the name of a folder");
        }

        if (folder is { } target)
        {
            ReportFolder.Check(doors.Full(target));
        }

        var problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, null, doors.Folder, problems.Add, doors.Today, herd);
        problems.LedgerIsBroken = loaded?.Herd.LedgerIsBroken == true;
        problems.BringTogether(ProblemCauses.Sorted(loaded is null ? [] : ProblemCauses.Of(loaded.Herd)));
        if (loaded is null || loaded.Reading.HasErrors)
        {
            problems.Print(doors);
            doors.Out.Write(json ? JsonText.Of(problems.All) + "\n" : "");
            doors.Err.WriteLine($"{problems.Counted()}. Nothing can be tuned until the rule files are mended.");
            return ExitCode.Bad;
        }

        var tuned = Tune(loaded, asked, doors);
        if (folder is not null)
        {
            ReportFolder.Write(doors.Full(folder), Report.Alone(TunePage.Of(tuned)));
        }

        doors.Out.Write(json ? TuneJson.Of(tuned) + "\n" : TuneText.Of(tuned, doors.OutInk)
            + (folder is null ? "" : $"\nAs a page: {doors.Show(doors.Full(folder))}/tune.html\n"));
        return problems.TellErrorsInRecords(doors);
    }

    private static RuleTuning Tune(LoadedProgramme loaded, (string Rule, string? With, string? List) asked, Doors doors)
    {
        var rulebook = loaded.Reading.Rulebook;
        var rule = RuleToTune.Find(rulebook, asked.Rule);
        var with = asked.With is null ? null : RuleToTune.Find(rulebook, asked.With);
        var choice = RuleToTune.List(rulebook, rule, asked.List);
        if (with is not null)
        {
            RuleToTune.List(rulebook, with, choice.List);
        }

        using var bar = new ProgressBar(doors, "Judging each value");
        return RuleTuner.Tune(rulebook, loaded.Herd, rule, choice, with, bar);
    }
}
