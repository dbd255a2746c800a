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

        ImmutableArray<VisitOption> options =
        [
            .. VisitDays.Of(rulebook.Plans.Visits, "collection", aims.Region, aims.Holidays)
                .Where(day => day >= window.From && day <= window.To)
                .Select(day => Option(rulebook, herd, day, today, outlook)),
        ];
        var ranked = Ranking.Best(options.Where(option => option.Obstacles.IsEmpty));
        return new(options, ranked.FirstOrDefault(), Ranking.Why(ranked), ranked.Skip(1).FirstOrDefault());
    }

    private static VisitOption Option(Rulebook rulebook, Herd herd, LocalDate day, LocalDate today, IOutlook? outlook)
    {
        var moved = MovedProgramme.To(rulebook, "collection", day);
        var (programme, plans) = (moved.Programme!, moved.Plans);
        var judge = new Judge(moved, herd);
        var donors = Count(Answers(judge, ProgrammeLists.Donors(programme)));
        var recipients = Count(Both(
            Answers(judge, ProgrammeLists.Recipients(programme)),
            ProgrammeLists.Treatment(programme) is { } treatment ? Answers(judge, treatment) : null));
        var rounds = Round.Of(programme);
        var treatments = rounds.Take(1).SelectMany(round => PlanCalendar.Methods(plans, programme.Aims).Select(method => TreatmentCalendar.Of(method, round))).ToList();
        var season = Season.Of(plans, programme, rounds);
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
                .. rounds.SelectMany(round => round.TransferDays.Prepend(round.Collection ?? round.FirstTransfer).Distinct()).SelectMany(date => Clash.On(date, programme.Aims)),
                .. Clash.WithVisits(plans, rounds),
            ],
            [.. plans.Tasks.Where(task => !task.IsNotNeeded && task.Due.In(programme)?.PlusDays(-task.LeadDays) < today).Select(task => task.Name)],
            outlook?.Of(moved, donors.AtMost, recipients.AtMost), [.. obstacles.OfType<Obstacle>()]);
    }

    private static Dictionary<int, Answer> Answers(Judge judge, Choice? choice)
    {
        if (choice is null)
        {
            return [];
        }

        var (animals, answers) = judge.Answers(choice);
        return animals.Zip(answers).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    /// <summary>The worse of her answers on the two lists; Later on either is No, for both days stand.</summary>
    private static Dictionary<int, Answer> Both(Dictionary<int, Answer> recipients, Dictionary<int, Answer>? treatment) => treatment is null
        ? recipients
        : recipients.ToDictionary(pair => pair.Key, pair => Worse(pair.Value, treatment.GetValueOrDefault(pair.Key, Answer.No)));

    private static Answer Worse(Answer one, Answer other) =>
        one == Answer.Later || other == Answer.Later ? Answer.No : (Answer)Math.Max((byte)one, (byte)other);

    private static Usable Count(Dictionary<int, Answer> answers) =>
        new(Of(answers, Answer.Ready), Of(answers, Answer.OnCourse), Of(answers, Answer.Ask), answers.Count);

    private static int Of(Dictionary<int, Answer> answers, Answer which) => answers.Values.Count(answer => answer == which);
}
