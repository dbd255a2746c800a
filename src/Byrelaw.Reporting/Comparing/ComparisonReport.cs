namespace Byrelaw.Reporting.Comparing;

/// <summary>Two rulebooks side by side, with what a herd feels of it where one was given.</summary>
/// <param name="OldFile">As shown.</param>
/// <param name="NewFile">As shown.</param>
/// <param name="Rules">What differs between the rulebooks.</param>
/// <param name="Herd">What differs between the answers; null where no records were given.</param>
public sealed record ComparisonReport(string OldFile, string NewFile, RulebookComparison Rules, HerdComparison? Herd)
{
    /// <summary>Made-up animals that sit on the limits of changed rules; where no records were given.</summary>
    public ImmutableArray<BoundaryAnimal> MadeUp { get; init; } = [];

    /// <summary>The differences under their headings, in the order of the page; headings without any are left out.</summary>
    public IEnumerable<(string Heading, IReadOnlyList<Difference> Differences)> Sections =>
        Rules.Differences.GroupBy(HeadingOf).Select(group => (group.Key, (IReadOnlyList<Difference>)[.. group]));

    private static string HeadingOf(Difference difference) => difference switch
    {
        WordDifference => "Words",
        DefineDifference => "Defined names",
        RuleDifference rule => $"Rules for {rule.Rule.List}",
        PreferDifference => "Preferences",
        WaiverDifference => "Waivers",
        RecordsDifference => "What the farm says of its records",
        ProgrammeDifference => "The programme",
        UnreadDifference => "Lines that cannot be read",
        _ => "What the plan is made from",
    };
}
