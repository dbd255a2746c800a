namespace Byrelaw.Planning.Sessions;

/// <summary>One session, with every list judged on that session's own days.</summary>
/// <param name="Days">Its days.</param>
/// <param name="Rulebook">The rules, with the programme moved to it.</param>
/// <param name="Judge">Judges by these, and by the book.</param>
/// <param name="Lists">Every list of the programme; donors as if those planned for the sessions before had been collected in them.</param>
public sealed record JudgedSession(Session Days, Rulebook Rulebook, Judge Judge, ImmutableArray<ListJudgement> Lists)
{
    /// <summary>Who is collected in it: donors that may be used and, where they are treated for it, surely pass the safety rules of their list on every day of treatment to come.</summary>
    public ImmutableArray<AnimalJudgement> Collected { get; init; } = [];

    /// <summary>The safety rules for those who are treated, asked on any day.</summary>
    public required SafetyOnDay Safety { get; init; }

    /// <summary>The same for donors, as planned.</summary>
    public required SafetyOnDay DonorSafety { get; init; }

    /// <summary>Counted from 1.</summary>
    public int Number => Days.Number;

    /// <summary>The programme on this session's days.</summary>
    public Programme Programme => Rulebook.Programme!;

    /// <summary>Donors that the programme names: they carry nobody else's embryo.</summary>
    public IEnumerable<int> NamedDonors => Donors is { Choice.From: ChoiceFrom.Named } donors ? donors.Animals.Select(animal => animal.Animal) : [];

    /// <summary>Which cows are dry on its first day of transfers.</summary>
    public DryCows Dry { get; } = DryCows.On(Judge, Days.FirstTransfer);

    /// <summary>Whether the farm's file gives it up: nobody is treated for it any more.</summary>
    public bool IsStopped => Rulebook.Plans.Stopped.Any(one => one.Session == Number);

    /// <summary>Those that may carry; null where the programme draws up no list of them.</summary>
    public ListJudgement? Recipients => ProgrammeLists.Judged(Lists, ProgrammeLists.Recipients(Programme));

    /// <summary>The donors; null where the programme draws up no list of them.</summary>
    public ListJudgement? Donors => ProgrammeLists.Judged(Lists, ProgrammeLists.Donors(Programme));

    /// <summary>Every session that is not over: after its final transfer a session is not judged, and the book says what came of it.</summary>
    /// <param name="draft">The programme's lists, judged on the days of its first session, or of every session.</param>
    /// <param name="today">The day of planning.</param>
    public static ImmutableArray<JudgedSession> Of(Draft draft, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var inTurn = new SessionsInTurn(draft.Rulebook, draft.Herd, draft.KnownOn, today);
        return [.. Session.Of(draft.Rulebook.Programme!).Where(session => session.FinalTransfer >= today).Select(session => inTurn.Judge(session, ByTheBook(draft, session)))];
    }

    /// <summary>What the draft has judged already is not judged twice.</summary>
    private static ImmutableArray<ListJudgement>? ByTheBook(Draft draft, Session session)
    {
        ImmutableArray<ListJudgement> its = [.. draft.Lists.Where(list => list.Session == session.Number)];
        return !its.IsEmpty ? its : session.Number == 1 && draft.Lists.All(list => list.Session is null) ? draft.Lists : null;
    }
}
