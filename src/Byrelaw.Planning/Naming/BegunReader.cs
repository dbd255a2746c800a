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
    private readonly TreatmentRows _rows = new(draft.Herd, draft.Rulebook.Plans);

    /// <summary>Everyone, by place in the herd.</summary>
    public ImmutableArray<BegunAnimal> Read() =>
    [
        .. Enumerable.Range(0, _herd.Count).Select(Latest).OfType<BegunAnimal>()
            .Where(one => !one.Sessions.IsEmpty || one.Start >= today.PlusDays(-DaysTold))
            .Select(one => one.State == BegunState.GoesOn ? one with { State = StateOf(one) } : one),
    ];

    private BegunAnimal? Latest(int animal)
    {
        BegunAnimal? latest = null;
        foreach (var row in _rows.Of(animal))
        {
            if (row.Date > today || row.Method is not { IsForDonors: false, IsNatural: false } method)
            {
                continue;
            }

            // A blank step is the step of hers that is due that day, else day 0.
            var isDue = latest is not null && latest.Method == method && method.Steps.Any(one => one.Day > 0 && latest.Start.PlusDays(one.Day) == row.Date);
            if (row.Step.Number is 0 || (row.Step.Number is null && !isDue))
            {
                latest = new(animal, method, row.Date, SessionsOf(method, row.Date, row.Session.Number))
                {
                    State = row.Step.IsUnreadable || row.Session.IsUnreadable ? BegunState.RowUnreadable : BegunState.GoesOn,
                };
            }
        }

        return latest;
    }

    /// <summary>The session that is written there; else those of which one of her heats serves a transfer.</summary>
    private ImmutableArray<int> SessionsOf(Method method, LocalDate start, double? written) => written is { } number
        ? [.. sessions.Where(session => session.Number == number).Select(session => session.Number)]
        : [.. sessions.Where(session => session.Days.Window is var window && Heats(method).Any(day => window.Serves(start.PlusDays(day)))).Select(session => session.Number)];

    private static IEnumerable<int> Heats(Method method) => method.InHeat is { Days: { IsEmpty: false } days } ? days.Select(day => day.Day) : method.HeatDay is { } heat ? [heat] : [];

    /// <summary>The sessions whose rules are asked of her: all that may be meant; where none can, the next one.</summary>
    private IEnumerable<JudgedSession> MeantBy(BegunAnimal begun) => begun.Sessions.IsEmpty ? sessions.Take(1) : sessions.Where(session => begun.Sessions.Contains(session.Number));

    private BegunState StateOf(BegunAnimal begun)
    {
        var days = begun.Method.Steps.Select(step => begun.Start.PlusDays(step.Day)).Where(day => day > today).Append(today).Distinct();
        if (!MeantBy(begun).All(session => days.All(day => session.Safety.Holds(ProgrammeLists.Treatment(session.Programme), begun.Animal, day))))
        {
            return BegunState.NotSafe;
        }

        return begun.Method.Steps.All(step => begun.Start.PlusDays(step.Day) is var day && (day >= today || day > _herd.KnownDay || IsGiven(begun, step))) ? BegunState.GoesOn : BegunState.StepMissing;
    }

    /// <summary>
    /// Whether a step of hers is surely on record: a row of that day names her method, and the step where it says one. A device that stayed in, or was gone, speaks against
    /// a step that takes it out; a hormone for another reason is no step.
    /// </summary>
    private bool IsGiven(BegunAnimal begun, MethodStep step) => _rows.Of(begun.Animal).Any(row =>
        row.Date == begun.Start.PlusDays(step.Day) && row.Method == begun.Method && !row.Step.IsUnreadable && (row.Step.Number ?? step.Day) == step.Day && Agrees(row.Device, step.Device));

    private static bool Agrees(string? said, DeviceMove? move) => said is null || move switch
    {
        DeviceMove.In => NameFolding.Fold(said) == "in",
        DeviceMove.Out => NameFolding.Fold(said) == "out",
        _ => true,
    };
}
