namespace Byrelaw.Reporting.Words;

/// <summary>What stands once at the head of a section of a list, because it is the same for all its animals.</summary>
internal static class SectionWords
{
    /// <summary>The heading, with how many there are.</summary>
    public static Wording Heading(ListSection section, ListReport list) => $"{Name(section, list)} {Wording.Faint($"{section.Animals.Length}")}";

    /// <summary>Such as <c>Named for session 2</c>.</summary>
    public static string Name(ListSection section, ListReport list) => section.Kind switch
    {
        SectionKind.Named => "Named",
        SectionKind.NamedElsewhere => $"Named for session {section.Session}",
        SectionKind.Spare => "Spare",
        SectionKind.NotNamed => "May carry, and cannot be named",
        SectionKind.Ready => AnswerWords.Word(Answer.Ready, list.Use),
        SectionKind.OnCourse => AnswerWords.Word(Answer.OnCourse, list.Use),
        SectionKind.Ask => "Ask",
        SectionKind.AskNoLongerInTime => "Ask, no longer in time",
        SectionKind.Later => "Later",
        _ => "No",
    };

    /// <summary>What holds for all of them.</summary>
    public static string Of(ListSection section, ListReport list) => section.Kind switch
    {
        SectionKind.Named => $"All rules hold on {list.Days}, {ReachWords.IfNothingHappens(list.Herd, list.Long)}.{(BothChecks.Of(list) is null ? "" : " Both checks let them through.")}",
        SectionKind.NamedElsewhere => $"All rules hold on {list.Days} too, {ReachWords.IfNothingHappens(list.Herd, list.Long)}; their place is in session {section.Session}.",
        SectionKind.Spare => $"All rules hold on {list.Days}, {ReachWords.IfNothingHappens(list.Herd, list.Long)}. In this order they take the place of any that falls out.",
        SectionKind.NotNamed => "This check lets them through, and they have no place in any session: the other check says otherwise, or treatment has begun, or they are booked or donors.",
        SectionKind.Ready => $"All rules hold on {list.Days}.{Best(section)}",
        SectionKind.OnCourse => $"All rules hold on {list.Days}, {ReachWords.IfNothingHappens(list.Herd, list.Long)}.{Best(section)}",
        SectionKind.Ask => "No rule forbids them, and something is to be found out first. None of them is given anything before.",
        SectionKind.AskNoLongerInTime => $"What would settle them takes longer than is left before {list.Days}.",
        SectionKind.Later => $"Not on {list.Days}, but later: for sure, or if what is still to be asked then turns out well.",
        _ => "Some rule is against them, and time alone does not change it.",
    };

    /// <summary>The best by points; nothing where nobody has any.</summary>
    private static string Best(ListSection section) => section.Animals.Where(animal => animal.Score > 0).OrderBy(animal => animal.Rank).Select(animal => animal.Number).ToList() is { Count: > 0 } best
        ? $" The best by points first: {Phrases.FirstOf(best, 12)}." : "";
}
