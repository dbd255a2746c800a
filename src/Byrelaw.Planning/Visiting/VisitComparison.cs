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
    public static VisitComparison? Of(Rulebook rulebook, Herd herd, LocalDate today)
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
                .Select(day => Option(rulebook, herd, sorts, day, today)),
        ];
        var ranked = VisitOrder.Best(options.Where(option => option.Obstacles.IsEmpty));
        return new(options, ranked.FirstOrDefault(), VisitOrder.Why(ranked), ranked.Skip(1).FirstOrDefault());
    }

    private static VisitOption Option(Rulebook rulebook, Herd herd, Sorts sorts, LocalDate day, LocalDate today)
    {
        var moved = MovedProgramme.To(rulebook, "collection", day);
        var (programme, plans) = (moved.Programme!, moved.Plans);
        var season = Season.OnAVisit(moved, herd, sorts, today);
        var calendar = PlanCalendar.Of(season);
        var (donors, recipients) = (Usable.Of(season.Donors), Usable.Of(season.Recipients));
        var treatments = calendar.Treatments.Where(treatment => treatment.Session == 1).ToList();
        Obstacle?[] obstacles =
        [
            treatments.Count > 0 && treatments.TrueForAll(one => one.Start < today) ? Obstacle.TreatmentPast : null,
            calendar.Calving.Sessions is [{ IsTooLate: true }, ..] ? Obstacle.TooLate : null,
            ProgrammeLists.Donors(programme) is not null && donors.AtMost == 0 ? Obstacle.NoDonor : null,
            ProgrammeLists.Recipients(programme) is not null && recipients.AtMost == 0 ? Obstacle.NoRecipient : null,
        ];
        return new(
            moved, day, donors, recipients, treatments.Find(one => !one.Days.IsEmpty)?.Start, calendar.Calving,
            [
                .. season.Sessions.SelectMany(session => session.TransferDays.Prepend(session.Collection ?? session.FirstTransfer).Distinct()).SelectMany(date => Clash.On(date, programme.Aims)),
                .. calendar.VisitClashes,
            ],
            [.. plans.Tasks.Where(task => !task.IsNotNeeded && task.Due?.In(programme)?.PlusDays(-task.LeadDays) < today).Select(task => task.Name)],
            Outlook.Of(SeasonInputs.Of(season, calendar)), [.. obstacles.OfType<Obstacle>()]);
    }
}
