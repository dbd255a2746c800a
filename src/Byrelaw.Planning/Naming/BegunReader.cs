namespace Byrelaw.Planning.Naming;

/// <summary>
/// Reads from the book who is begun. A row without a method, a hormone for another reason, begins nobody. Nobody is begun twice: her latest
/// beginning counts.
/// </summary>
internal sealed class BegunReader(Draft draft, ImmutableArray<JudgedSession> sessions, LocalDate today)
{
    /// <summary>A beginning that no session can mean is told for so long; an older one was for another season.</summary>
    private const int DaysTold = 30;

    private readonly Herd _herd = draft.Herd;
    private readonly PlanStatements _plans = draft.Rulebook.Plans;
    private readonly Dictionary<LocalDate, Dictionary<int, Answer>> _safe = [];

    /// <summary>Everyone, by place in the herd.</summary>
    public ImmutableArray<BegunAnimal> Read()
    {
        var begun = new SortedDictionary<int, BegunAnimal>();
        foreach (var kind in _herd.Vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Treatment && Place(kind, "method") >= 0))
        {
            for (var animal = 0; animal < _herd.Count; animal++)
            {
                if (Latest(kind, animal) is { } one && (!begun.TryGetValue(animal, out var other) || other.Start < one.Start))
                {
                    begun[animal] = one;
                }
            }
        }

        return [.. begun.Values.Where(one => !one.Sessions.IsEmpty || one.Start >= today.PlusDays(-DaysTold)).Select(one => one with { State = StateOf(one) })];
    }

    private BegunAnimal? Latest(EventKind kind, int animal)
    {
        var run = _herd.Runs[kind.Id];
        BegunAnimal? latest = null;
        for (var at = run.Starts[animal]; at < run.Starts[animal + 1]; at++)
        {
            var (line, date) = (run.Lines[at], Day.Date(run.Days[at]));
            if (date > today || Text(kind, line, "method") is not { } name || _plans.Method(name) is not { IsForDonors: false, IsNatural: false } method)
            {
                continue;
            }

            // A blank step is the step of hers that is due that day, else day 0.
            var step = Number(kind, line, "step");
            var isDue = latest is not null && latest.Method == method && method.Steps.Any(one => one.Day > 0 && latest.Start.PlusDays(one.Day) == date);
            if (step is 0 || (step is null && !isDue))
            {
                latest = new(animal, method, date, SessionsOf(method, date, Number(kind, line, "session")));
            }
        }

        return latest;
    }

    /// <summary>The session that is written there; else those of which one of her heats serves a transfer.</summary>
    private ImmutableArray<int> SessionsOf(Method method, LocalDate start, double? written) => written is { } number
        ? [.. sessions.Where(session => session.Number == number).Select(session => session.Number)]
        : [.. sessions.Where(session => HeatWindow.Of(session.Round) is var window && Heats(method).Any(day => window.Serves(start.PlusDays(day)))).Select(session => session.Number)];

    private static IEnumerable<int> Heats(Method method) => method.InHeat is { Days: { IsEmpty: false } days } ? days.Select(day => day.Day) : method.HeatDay is { } heat ? [heat] : [];

    private BegunState StateOf(BegunAnimal begun)
    {
        var days = begun.Method.Steps.Select(step => begun.Start.PlusDays(step.Day)).Where(day => day > today).Append(today).Distinct();
        if (days.Any(day => !Safe(day).GetValueOrDefault(begun.Animal, Answer.No).MayBeUsed()))
        {
            return BegunState.NotSafe;
        }

        return begun.Method.Steps.Select(step => begun.Start.PlusDays(step.Day)).All(day => day >= today || day > _herd.KnownDay || IsGiven(begun.Animal, day)) ? BegunState.GoesOn : BegunState.StepMissing;
    }

    private bool IsGiven(int animal, LocalDate day) => _herd.Vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Treatment)
        .Any(kind => _herd.Runs[kind.Id].DaysOf(animal).Contains(Day.Number(day)));

    /// <summary>Who passes the safety rules for treatment and the floor on a day: of one who is begun nothing else is asked any more, for her own hormone would speak against her.</summary>
    private Dictionary<int, Answer> Safe(LocalDate day)
    {
        if (_safe.TryGetValue(day, out var known))
        {
            return known;
        }

        if (ProgrammeLists.Treatment(draft.Rulebook.Programme!) is not { } treatment)
        {
            return _safe[day] = [];
        }

        var rules = draft.Rulebook with { Rules = [.. draft.Rulebook.Rules.Where(rule => rule.IsSafety)] };
        var (animals, answers) = new Judge(rules, _herd, draft.KnownOn).Answers(treatment, day, day);
        return _safe[day] = animals.Zip(answers).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    private static int Place(EventKind kind, string detail)
    {
        for (var i = 0; i < kind.Details.Length; i++)
        {
            if (NameFolding.Fold(kind.Details[i].Name) == detail)
            {
                return i;
            }
        }

        return -1;
    }

    private string? Text(EventKind kind, int line, string detail) => Cell(kind, line, detail) is { State: FactState.Known, Text: { } text } ? text : null;

    private double? Number(EventKind kind, int line, string detail) => Cell(kind, line, detail) is { State: FactState.Known } cell ? cell.Number : null;

    private DetailCell? Cell(EventKind kind, int line, string detail) => Place(kind, detail) is var place and >= 0 ? _herd.Details.Of(line, place) : null;
}
