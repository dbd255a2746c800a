using Byrelaw.Judging.Criteria;

namespace Byrelaw.Planning.Visiting;

/// <summary>Every visit on which the first collection could be, and the best of them.</summary>
/// <param name="Options">All of them in order.</param>
/// <param name="Best">The best that can be used; null where none can.</param>
/// <param name="Because">What sets the best apart from the one that comes after it.</param>
/// <param name="RunnerUp">That one; null where only one can be used.</param>
public sealed record VisitComparison(ImmutableArray<VisitOption> Options, VisitOption? Best, Advantage Because, VisitOption? RunnerUp)
{
    /// <summary>Compares them; null where the programme leaves no visit to be chosen.</summary>
    /// <param name="rulebook">With a programme, read without errors.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="today">The day of planning.</param>
    /// <param name="outlook">Works out what comes of each; null for a comparison by dates and animals alone.</param>
    public static VisitComparison? Of(Rulebook rulebook, Herd herd, LocalDate today, IOutlook? outlook = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        if (rulebook.Programme?.Aims is not { OnAVisit: { } window } aims)
        {
            return null;
        }

        var sorts = new Sorts(herd);
        ImmutableArray<VisitOption> options =
        [
            .. VisitDays.Of(rulebook.Plans.Visits, "collection", aims.Region, aims.Holidays)
                .Where(day => day >= window.From && day <= window.To)
                .Select(day => Option(rulebook, herd, sorts, day, today, outlook)),
        ];
        var ranked = VisitOrder.Best(options.Where(option => option.Obstacles.IsEmpty));
        return new(options, ranked.FirstOrDefault(), VisitOrder.Why(ranked), ranked.Skip(1).FirstOrDefault());
    }

    private static VisitOption Option(Rulebook rulebook, Herd herd, Sorts sorts, LocalDate day, LocalDate today, IOutlook? outlook)
    {
        var moved = MovedProgramme.To(rulebook, "collection", day);
        var (programme, plans) = (moved.Programme!, moved.Plans);
        var judge = new Judge(moved, herd);
        var standings = new Dictionary<string, ListStanding>(StringComparer.Ordinal);
        ListStanding Standing(Choice choice) => standings.TryGetValue(choice.List, out var known) ? known : standings[choice.List] = ListStanding.Of(judge, sorts, choice);
        var (donors, recipients) = (Usable.Of(JudgedSeason.Donors(programme, Standing)), Usable.Of(JudgedSeason.Recipients(programme, Standing)));
        var calendar = PlanCalendar.Of(moved, [.. PaidLists(programme, plans).Select(choice => judge.JudgeList(choice))], today);
        var treatments = calendar.Treatments.Where(treatment => treatment.Round == 1).ToList();
        var season = calendar.Season;
        Obstacle?[] obstacles =
        [
            treatments.Count > 0 && treatments.TrueForAll(one => one.Start < today) ? Obstacle.TreatmentPast : null,
            !season.Rounds.IsEmpty && season.Rounds[0].IsTooLate ? Obstacle.TooLate : null,
            ProgrammeLists.Donors(programme) is not null && donors.AtMost == 0 ? Obstacle.NoDonor : null,
            ProgrammeLists.Recipients(programme) is not null && recipients.AtMost == 0 ? Obstacle.NoRecipient : null,
        ];
        return new(
            moved, day, donors, recipients, treatments.Find(one => !one.Days.IsEmpty)?.Start, season,
            [
                .. calendar.Rounds.SelectMany(round => round.TransferDays.Prepend(round.Collection ?? round.FirstTransfer).Distinct()).SelectMany(date => Clash.On(date, programme.Aims)),
                .. calendar.VisitClashes,
            ],
            [.. plans.Tasks.Where(task => !task.IsNotNeeded && task.Due?.In(programme)?.PlusDays(-task.LeadDays) < today).Select(task => task.Name)],
            outlook?.Of(moved, JudgedSeason.Inputs(moved, Standing, calendar)), [.. obstacles.OfType<Obstacle>()]);
    }

    /// <summary>Lists with tasks that are paid for by the animal: how many need them is known only from the reasons, which take longer than the answers.</summary>
    private static IEnumerable<Choice> PaidLists(Programme programme, PlanStatements plans)
    {
        var paid = plans.Tasks
            .Where(task => task is { IsNotNeeded: false, List: not null } && (task.Cost is not null || (task.ResultsTake is not null && plans.Cost(CostUnit.Sample) is not null)))
            .Select(task => NameFolding.Fold(task.List!)).ToHashSet();
        return programme.Choices.Where(choice => paid.Contains(NameFolding.Fold(choice.List)));
    }
}
