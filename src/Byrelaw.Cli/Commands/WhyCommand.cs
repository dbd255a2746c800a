using Byrelaw.Reporting.Causes;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw why PROGRAMME ANIMAL</c>: one animal's explanation on the terminal.</summary>
internal static class WhyCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var animal = new Argument<string>("ANIMAL") { Description = "Her number on the farm." };
        var all = new Option<bool>("--all") { Description = "List the rules that are met, too." };
        var (on, knownOn, format) = (SharedOptions.On(), SharedOptions.KnownOn(), SharedOptions.Format());
        var (herd, recordsTo) = (SharedOptions.Herd(), SharedOptions.RecordsTo());
        var command = new Command("why", "Explain one animal's answer.") { programme, animal, all, on, knownOn, recordsTo, herd, format };
        command.SetAction(parsed => Run(
            parsed.GetValue(programme)!, parsed.GetValue(animal)!, parsed.GetValue(all), new AskedDays(parsed.GetValue(on), parsed.GetValue(knownOn), SharedOptions.Reached(parsed.GetValue(recordsTo), doors)), parsed.GetValue(herd),
            parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Run(string programme, string number, bool all, AskedDays days, string? herd, bool json, Doors doors)
    {
        var problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, days.KnownOn, doors.Folder, problems.Add, doors.Today, herd, days.RecordsTo);
        problems.BringTogether(ProblemCauses.Sorted(loaded is null ? [] : ProblemCauses.Of(loaded.Herd)));
        if (loaded is null)
        {
            return DraftCommand.NotJudged(problems, json, doors);
        }

        var animal = AnimalAskedFor.Find(number, loaded.Herd);
        var draft = new Judge(loaded.Reading.Rulebook, loaded.Herd, days.KnownOn).JudgeHer(animal, days.On);
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(draft));
        }
        else
        {
            var sections = draft.Lists.Select(list => WhyText.Of(new AnimalReport(new ListReport(draft, list), list.Animals[0]), all, doors.OutInk));
            doors.Out.Write(string.Join("\n", sections));
        }

        SharedOptions.SayRecordsTo(days.RecordsTo, loaded.Herd, doors);
        problems.Add(UnknownAnimals.Waived(loaded.Reading.Rulebook, loaded.Herd));
        problems.Print(doors);
        return loaded.HasErrors ? ExitCode.Bad : ExitCode.Done;
    }
}
