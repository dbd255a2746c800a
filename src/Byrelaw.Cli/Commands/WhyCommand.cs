namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw why PROGRAMME ANIMAL</c>: one animal's explanation on the terminal.</summary>
internal static class WhyCommand
{
    public static Command Make(Doors doors)
    {
        var programme = new Argument<string>("PROGRAMME") { Description = "The programme's file." };
        var animal = new Argument<string>("ANIMAL") { Description = "Her number on the farm." };
        var all = new Option<bool>("--all") { Description = "List the rules that are met, too." };
        var (on, knownOn, format) = (Options.On(), Options.KnownOn(), Options.Format());
        var command = new Command("why", "Explain one animal's answer.") { programme, animal, all, on, knownOn, format };
        command.SetAction(parsed => Run(
            parsed.GetValue(programme)!, parsed.GetValue(animal)!, parsed.GetValue(all), parsed.GetValue(on), parsed.GetValue(knownOn),
            parsed.GetValue(format) == "json", doors));
        return command;
    }

    private static int Run(string programme, string number, bool all, LocalDate? on, LocalDate? knownOn, bool json, Doors doors)
    {
        var problems = new Problems();
        var loaded = LoadedProgramme.Read(programme, knownOn, doors, problems);
        if (loaded is null)
        {
            return DraftCommand.NotJudged(problems, json, doors);
        }

        var animal = Find(number, loaded.Herd);
        var draft = JudgeHer(loaded, animal, on, knownOn);
        if (json)
        {
            doors.Out.WriteLine(JsonText.Of(draft));
        }
        else
        {
            var sections = draft.Lists.Select(list => WhyText.Of(new AnimalReport(new ListReport(draft, list), list.Animals[0]), all, doors.OutInk));
            doors.Out.Write(string.Join("\n", sections));
        }

        problems.Add(UnknownAnimals.Waived(loaded.Reading.Rulebook, loaded.Herd));
        problems.Print(doors);
        return loaded.HasErrors ? ExitCode.Bad : ExitCode.Done;
    }

    private static int Find(string number, Herd herd)
    {
        var animal = herd.Find(number);
        if (animal >= 0)
        {
            return animal;
        }

        var near = NearestNumber.To(number, herd.Numbers);
        throw new CannotDoException($"no animal {number} in {herd.AnimalsFile}{(near is null ? "" : $"; did you mean {near}?")}");
    }

    /// <summary>Her answers on every list that may take her; on all lists where none does.</summary>
    private static Draft JudgeHer(LoadedProgramme loaded, int animal, LocalDate? on, LocalDate? knownOn)
    {
        var rulebook = loaded.Reading.Rulebook;
        var choices = rulebook.Programme!.Choices;
        var number = loaded.Herd.Numbers[animal];
        var hers = choices.Where(choice => MayTake(choice, number, choices)).ToList();
        var judge = new Judge(rulebook, loaded.Herd, knownOn);
        var lists = (hers.Count > 0 ? hers : [.. choices]).Select(choice =>
        {
            var days = on is { } day ? choice with { JudgedFrom = day, JudgedTo = day } : choice;
            var broken = rulebook.BrokenParts.Where(part => part.List is null || part.List == choice.List);
            return new ListJudgement(days, [.. broken], [judge.JudgeOne(choice, animal, on)], []);
        });
        return new Draft(rulebook, loaded.Herd, knownOn, [.. lists]);
    }

    private static bool MayTake(Choice choice, string number, IReadOnlyList<Choice> choices) => choice.From switch
    {
        ChoiceFrom.Named => choice.Animals.Contains(number),
        ChoiceFrom.AnotherList => choices.Where(other => other.List == choice.OtherList).Any(other => MayTake(other, number, choices)),
        _ => true,
    };
}
