namespace Byrelaw.Reporting.Comparing;

/// <summary>One difference: what it is about and what became of it, then the rest in sentences.</summary>
public static class DifferenceWords
{
    /// <summary>Such as <c>Changed: Eight weeks calved</c>.</summary>
    public static string Lead(Difference difference) => difference switch
    {
        WaiverDifference waiver => $"{How(difference.Happened)}: {waiver.Name} for {waiver.Animal}",
        RuleDifference { Old: not null, New: null, NewDrop: not null } rule => $"Dropped: {rule.Name}",
        RuleDifference { OldDrop: not null, New: not null } rule => $"Taken up again: {rule.Name}",
        RuleDifference { Old: null, New: null } rule => $"Dropped in both: {rule.Name}",
        _ when difference.IsRenamed && difference.Details.IsEmpty => $"Renamed: {difference.OldName} is now {difference.NewName}",
        _ when difference.IsRenamed => $"Renamed and changed: {difference.OldName} is now {difference.NewName}",
        _ => $"{How(difference.Happened)}: {difference.Name}",
    };

    /// <summary>The sentences that follow; empty for none.</summary>
    public static string Rest(Difference difference) => string.Join(' ', Sentences(difference).Where(sentence => sentence.Length > 0).Select(Phrases.Sentence));

    private static string How(Happened happened) => happened switch { Happened.Added => "New", Happened.Gone => "Gone", _ => "Changed" };

    private static IEnumerable<string> Sentences(Difference difference)
    {
        yield return difference.Sameness switch
        {
            Sameness.SameMeaning when difference is WordDifference => "Surely one and the same: the one name is a further name of the other.",
            Sameness.SameMeaning => "Surely one and the same: it says the same in every word.",
            Sameness.LikeMeaning => "Probably one and the same: it differs in its numbers only.",
            _ => "",
        };
        foreach (var sentence in Own(difference))
        {
            yield return sentence;
        }

        foreach (var detail in difference.Details)
        {
            yield return Stop(DetailWords.Of(detail));
        }

        if (difference is DefineDifference { Touches: var rules })
        {
            yield return rules.IsEmpty ? "No rule speaks of it." : $"It touches {Phrases.And([.. rules])}.";
        }
    }

    /// <summary>With a full stop, unless a quoted sentence ends with one.</summary>
    private static string Stop(string text) => text.EndsWith(".”", StringComparison.Ordinal) || text.EndsWith('.') ? text : text + ".";

    private static IEnumerable<string> Own(Difference difference) => difference switch
    {
        WordDifference { Old: null, New: { } added } => [$"{added}."],
        WordDifference { New: null, Old: { } gone } => [$"{gone}."],
        DefineDifference { Old: null, New: { } added } => [$"It stands for: {ConditionWords.Of(added.Condition)}."],
        DefineDifference { New: null, Old: { } gone } => [$"It stood for: {ConditionWords.Of(gone.Condition)}."],
        RuleDifference rule => Own(rule),
        PreferDifference { Old: null, New: { } added } => [$"It likes: {ConditionWords.Of(added.Condition)}.", added.Because ?? ""],
        PreferDifference { New: null, Old: { } gone } => [$"It liked: {ConditionWords.Of(gone.Condition)}."],
        WaiverDifference { Old: null, New: { } added } => [$"Until {Dates.Long(added.Until)}.", added.Because, LocalPractice.Agreed(added.Agreement)],
        WaiverDifference { New: null, Old: { } gone } => [$"It ran until {Dates.Long(gone.Until)}.", LocalPractice.Agreed(gone.Agreement)],
        _ => [],
    };

    private static IEnumerable<string> Own(RuleDifference rule) => rule switch
    {
        { NewDrop: { } drop, Old: { } old } => [$"It asked for {ConditionWords.Of(old.Shown)}.", drop.Because, LocalPractice.Agreed(drop.Agreement)],
        { OldDrop: not null, New: { } now } => [$"It asks for {ConditionWords.Of(now.Shown)}."],
        { Old: null, New: { } added } => [Asks("asks", added), added.Because ?? "No reason is given.", LocalPractice.Agreed(added.Agreement)],
        { Old: { } gone, New: null } => [Asks("asked", gone)],
        { Old: { } before, New: { } now } when before.IsSafety || now.IsSafety => ["It is a safety rule."],
        _ => [],
    };

    private static string Asks(string verb, Rule rule)
    {
        var audience = RuleWords.Audience(rule);
        return $"It {verb} for {ConditionWords.Of(rule.Shown)}{(audience.Length == 0 ? "" : $", {audience}")}.";
    }
}
