namespace Byrelaw.Checking.Trouble.Showing;

/// <summary>Asks the judge about a made-up animal.</summary>
internal static class AnimalTrial
{
    private const string List = "made up";

    /// <summary>What rules say of the first animal of a herd on a day.</summary>
    /// <returns>One truth a rule; null where she could not be judged.</returns>
    public static Truth[]? Run(Rulebook rulebook, MadeUpHerd made, LocalDate day, params Rule[] rules)
    {
        var herd = made.Read(rulebook.Vocabulary);
        if (herd.Problems.Length > 0 || rulebook.Files.IsEmpty)
        {
            return null;
        }

        var nowhere = new Language.Sources.SourceSpan(rulebook.Files[0], 0, 0);
        var choice = new Choice(List, ChoiceFrom.Females, [], null, day, day, nowhere) { Use = ListUse.ForLookingOnly };
        var trial = rulebook with
        {
            Rules = [.. rules.Select((rule, place) => rule with { List = List, Name = $"{place}", OnTheDay = false })],
            Prefers = [],
            Drops = [],
            Waivers = [],
            BrokenParts = [],
            Programme = (rulebook.Programme ?? new Programme(List, [], [], nowhere)) with { Choices = [choice] },
        };
        return [.. new Judge(trial, herd).TruthsOn(choice, day)[^rules.Length..].Select(truths => truths[0])];
    }
}
