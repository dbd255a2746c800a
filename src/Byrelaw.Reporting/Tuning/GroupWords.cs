namespace Byrelaw.Reporting.Tuning;

/// <summary>What the animals next to a value have in common, in sentences.</summary>
internal static class GroupWords
{
    private const int AtMost = 3;

    /// <summary>A sentence or more for each group that is large enough to say something of.</summary>
    public static IEnumerable<string> All(TunedNumber number, RuleTuning tuned) =>
        number.Margins.Where(group => group.Animals.Length >= MarginGroup.Fewest).Select(group => Of(group, number.Tuning, tuned.Judged.Animals.Length));

    /// <summary>Who they are and what tells them from the rest.</summary>
    private static string Of(MarginGroup group, NumberTuning tuning, int onTheList)
    {
        var value = NumberWords.Value(tuning.Number, group.Value);
        var (count, isLower) = (group.Animals.Length, group.Value < tuning.Current);
        var numbers = Phrases.FirstOf([.. group.Animals.Select(animal => animal.Number)], 12);
        var who = group.IsLetIn
            ? $"The next {count} that {(isLower ? "lowering" : "raising")} it lets in, {(isLower ? "down" : "up")} to {value}: {numbers}."
            : $"The last {count} let in, those that {(isLower ? "lowering" : "raising")} it to {value} leaves out: {numbers}.";
        return group.Common.IsEmpty ? $"{who} Nothing looked at tells them from the rest." : $"{who} {string.Join(" ", group.Common.Take(AtMost).Select(common => Sentence(common, onTheList)))}";
    }

    /// <summary><c>7 of the 9 are heifers; of all 80 on the list 12 are.</c></summary>
    private static string Sentence(CommonTrait common, int onTheList)
    {
        var inGroup = common.InGroup == common.GroupSize ? $"All {common.GroupSize}" : $"{common.InGroup} of the {common.GroupSize}";
        return $"{inGroup} {Predicate(common.Trait, common.InGroup)}; of {(common.All == onTheList ? $"all {common.All} on the list" : $"the {common.All} that the rule is for")} {common.InAll} {Verb(common.Trait.Kind, common.InAll)}.";
    }

    private static string Predicate(Trait trait, int count) => (trait.Kind, count) switch
    {
        (TraitKind.Sort, 1) => $"is a {trait.Value}",
        (TraitKind.Sort, _) => $"are {trait.Value}s",
        (TraitKind.Parity, 1) => $"has calved {Times(trait.Value)}",
        (TraitKind.Parity, _) => $"have calved {Times(trait.Value)}",
        (TraitKind.Mob, 1) => $"is in the mob {trait.Value}",
        (TraitKind.Mob, _) => $"are in the mob {trait.Value}",
        (TraitKind.Fact, 1) => $"has {trait.Name} {trait.Value}",
        (TraitKind.Fact, _) => $"have {trait.Name} {trait.Value}",
        (TraitKind.WeeksCalved, _) => $"calved {trait.Value} weeks before the first judging day",
        (_, 1) => $"only just meets “{trait.Value}”",
        _ => $"only just meet “{trait.Value}”",
    };

    private static string Verb(TraitKind kind, int count) => kind switch
    {
        TraitKind.Sort or TraitKind.Mob => count == 1 ? "is" : "are",
        TraitKind.Parity or TraitKind.Fact => count == 1 ? "has" : "have",
        TraitKind.WeeksCalved => "did",
        _ => count == 1 ? "does" : "do",
    };

    private static string Times(string parity) => int.TryParse(parity, out var times) ? Numbers.Times(times) : parity;
}
