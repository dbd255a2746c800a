namespace Byrelaw.Judging.Tests.Floors;

/// <summary>Who is let through, and by what somebody comes in who was kept out.</summary>
internal static class LetThrough
{
    /// <summary>Every answer, each list judged on its own days.</summary>
    public static Dictionary<(string List, string Animal), Answer> Answers(Rulebook rulebook, FloorCase one) => Judged(rulebook, one)(one.On);

    /// <summary>The same for any day; null for each list's own.</summary>
    public static Func<LocalDate?, Dictionary<(string List, string Animal), Answer>> Judged(Rulebook rulebook, FloorCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), rulebook.Vocabulary, rulebook.Records);
        var judge = new Judge(rulebook, herd);
        return on => rulebook.Programme!.Choices
            .SelectMany(choice => judge.Answers(choice, on) is var (animals, answers) ? animals.Zip(answers, (animal, answer) => ((choice.List, herd.Numbers[animal]), answer)) : [])
            .ToDictionary(answer => answer.Item1, answer => answer.answer);
    }

    /// <summary>The first who is used now and was not, or is surer now; null where nobody is.</summary>
    public static string? Anew(Dictionary<(string List, string Animal), Answer> before, Dictionary<(string List, string Animal), Answer> after)
    {
        foreach (var (place, answer) in after)
        {
            var was = before.GetValueOrDefault(place, Answer.No);
            if (answer == Answer.Ready ? was != Answer.Ready : answer == Answer.OnCourse && !was.MayBeUsed())
            {
                return $"{place}: {was} became {answer}";
            }
        }

        return null;
    }
}
