namespace Byrelaw.Loading;

/// <summary>Finds the rule whose numbers are asked for, and the list to count.</summary>
public static class RuleToTune
{
    /// <summary>The rule with this name; it holds a number that answers rest on.</summary>
    /// <exception cref="CannotDoException">There is none; the message says what there is.</exception>
    public static Rule Find(Rulebook rulebook, string asked)
    {
        var name = NameFolding.Fold(asked);
        if (rulebook.Rules.FirstOrDefault(rule => NameFolding.Fold(rule.Name) == name) is not { } found)
        {
            throw new CannotDoException(NotThere(rulebook, asked, name));
        }

        return found.OnTheDay ? throw new CannotDoException($"“{found.Name}” is left to the day itself: no answer made beforehand rests on it, so no number of it changes one")
            : NumbersOfRule.Of(rulebook, found).IsEmpty ? throw new CannotDoException($"“{found.Name}” holds no number: it asks for {CanonicalText.Of(found.Shown)}")
            : found;
    }

    /// <summary>The list to count: the one asked for, else the rule's own.</summary>
    /// <exception cref="CannotDoException">The programme draws up no such list, or no number of the rule moves it.</exception>
    public static Choice List(Rulebook rulebook, Rule rule, string? asked)
    {
        var choices = rulebook.Programme!.Choices;
        var name = NameFolding.Fold(asked ?? (rule.List == Rule.EveryList ? choices.FirstOrDefault()?.List : null) ?? rule.List);
        var choice = choices.FirstOrDefault(one => NameFolding.Fold(one.List) == name)
            ?? throw new CannotDoException($"the programme draws up no list of {asked ?? rule.List}; it has {Phrases.And([.. choices.Select(one => one.List)])}");
        var moves = NumbersOfRule.Of(rulebook, rule).Any(number => MovedBy.Rules(rulebook, number).Any(moved => moved.IsFor(choice.List)));
        return moves ? choice : throw new CannotDoException($"“{rule.Name}” is a rule for {rule.List}, and no number of it moves the list of {choice.List}");
    }

    private static string NotThere(Rulebook rulebook, string asked, string name)
    {
        if (rulebook.Prefers.FirstOrDefault(prefer => NameFolding.Fold(prefer.Name) == name) is { } preference)
        {
            return $"“{preference.Name}” is a preference: it ranks those who may be used and lets nobody in, so there is nothing to tune";
        }

        if (rulebook.Drops.FirstOrDefault(drop => NameFolding.Fold(drop.Rule.Name) == name) is { } dropped)
        {
            return $"“{dropped.Rule.Name}” is dropped on this farm, so no number of it counts";
        }

        var near = NearestName.To(asked, rulebook.Rules.Select(rule => rule.Name));
        return $"no rule “{asked}”; {(near is null ? $"there are {Phrases.And([.. rulebook.Rules.Select(rule => $"“{rule.Name}”")])}" : $"did you mean “{near}”?")}";
    }
}
