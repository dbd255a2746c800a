namespace Byrelaw.Planning.Naming;

/// <summary>One session, with every list judged on that session's own days.</summary>
/// <param name="Round">Its days.</param>
/// <param name="Rulebook">The rules, with the programme moved to it.</param>
/// <param name="Judge">Judges by these.</param>
/// <param name="Lists">Every list of the programme; donors as if those named had been collected in the sessions before.</param>
public sealed record JudgedSession(Round Round, Rulebook Rulebook, Judge Judge, ImmutableArray<ListJudgement> Lists)
{
    /// <summary>What is supposed of its donors: collections of the sessions before.</summary>
    internal ImmutableArray<Records.Reading.SupposedRow> Planned { get; init; } = [];

    /// <summary>Counted from 1.</summary>
    public int Number => Round.Number;

    /// <summary>The programme on this session's days.</summary>
    public Programme Programme => Rulebook.Programme!;

    /// <summary>Donors that the programme names: they carry nobody else's embryo.</summary>
    public IEnumerable<int> NamedDonors => Donors is { Choice.From: ChoiceFrom.Named } donors ? donors.Animals.Select(animal => animal.Animal) : [];

    /// <summary>Which cows are dry on its first day of transfers.</summary>
    public DryCows Dry { get; } = DryCows.On(Judge, Round.FirstTransfer);

    /// <summary>Whether the farm's file gives it up: nobody is treated for it any more.</summary>
    public bool IsStopped => Rulebook.Plans.Stopped.Any(one => one.Session == Number);

    /// <summary>Those that may carry; null where the programme draws up no list of them.</summary>
    public ListJudgement? Recipients => ProgrammeLists.Judged(Lists, ProgrammeLists.Recipients(Programme));

    /// <summary>The donors; null where the programme draws up no list of them.</summary>
    public ListJudgement? Donors => ProgrammeLists.Judged(Lists, ProgrammeLists.Donors(Programme));

    /// <summary>Every session that is not over: after its final transfer a session is not judged, and the book says what came of it.</summary>
    /// <param name="draft">The programme's lists, judged on the days of its first session.</param>
    /// <param name="today">The day of planning.</param>
    public static ImmutableArray<JudgedSession> Of(Draft draft, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var donors = new DonorsAsPlanned(draft, today);
        return [.. Round.Of(draft.Rulebook.Programme!).Where(round => round.FinalTransfer >= today).Select(round => Of(draft, round, donors))];
    }

    private static JudgedSession Of(Draft draft, Round round, DonorsAsPlanned donors)
    {
        var rulebook = round.Number == 1 ? draft.Rulebook : draft.Rulebook with { Programme = round.Programme };
        var judge = new Judge(rulebook, draft.Herd, draft.KnownOn);
        var planned = donors.Planned;
        return new(round, rulebook, judge, donors.Next(round, rulebook, round.Number == 1 ? draft.Lists : judge.JudgeAll().Lists)) { Planned = planned };
    }
}
