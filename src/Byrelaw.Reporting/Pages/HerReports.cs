namespace Byrelaw.Reporting.Pages;

/// <summary>One animal on every list of a draft that has her, session by session.</summary>
/// <param name="All">In the draft's order; at least one.</param>
public sealed record HerReports(ImmutableArray<AnimalReport> All)
{
    /// <summary>The one that speaks for her: whether she may carry at the first session, and where she is on no such list the first of all.</summary>
    public AnimalReport Main { get; } = All.FirstOrDefault(report => report.On.Rulebook.Programme is { } programme && ProgrammeLists.Recipients(programme)?.List == report.On.Name) ?? All[0];

    /// <summary>Those of the same session: both checks, and donors.</summary>
    public IEnumerable<AnimalReport> OfMainSession => All.Where(report => report.On.List.Session == Main.On.List.Session).OrderBy(report => ReferenceEquals(report, Main) ? 0 : 1);

    /// <summary>The worst that the floor says of her on any day that is judged.</summary>
    public InCalf InCalf => All.Max(report => report.Animal.InCalf);

    /// <summary>Of every animal of a draft, by number.</summary>
    public static IEnumerable<HerReports> Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return draft.Lists.Select(list => new ListReport(draft, list)).SelectMany(list => list.List.Animals.Select(animal => new AnimalReport(list, animal)))
            .GroupBy(report => report.Animal.Animal).OrderBy(group => group.Key).Select(group => new HerReports([.. group]));
    }
}
