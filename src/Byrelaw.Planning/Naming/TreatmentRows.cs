namespace Byrelaw.Planning.Naming;

/// <summary>Rows of an animal that mark treatment, with what they say of the method, the session, the step and the device.</summary>
internal sealed class TreatmentRows
{
    /// <summary>In place of what became of a device, where something stands there that cannot be read.</summary>
    public const string Unreadable = "?";

    private const string NoDevice = "none";

    private readonly Herd _herd;
    private readonly PlanStatements _plans;
    private readonly ImmutableArray<(EventKind Kind, int Method, int Session, int Step, int Device)> _kinds;

    public TreatmentRows(Herd herd, PlanStatements plans)
    {
        (_herd, _plans) = (herd, plans);
        _kinds =
        [
            .. herd.Vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Treatment)
                .Select(kind => (kind, Place(kind, "method"), Place(kind, "session"), Place(kind, "step"), Place(kind, "device"))),
        ];
    }

    /// <summary>Whether there is any row at all.</summary>
    public bool Any => _kinds.Any(kind => _herd.Runs[kind.Kind.Id].Days.Length > 0);

    /// <summary>Hers, oldest first.</summary>
    public IEnumerable<TreatmentRow> Of(int animal) => _kinds.SelectMany(kind => Of(kind, animal)).OrderBy(row => row.Date);

    private IEnumerable<TreatmentRow> Of((EventKind Kind, int Method, int Session, int Step, int Device) of, int animal)
    {
        var run = _herd.Runs[of.Kind.Id];
        for (var at = run.Starts[animal]; at < run.Starts[animal + 1]; at++)
        {
            var line = run.Lines[at];
            var method = Cell(line, of.Method) is { State: FactState.Known, Text: { } name } ? _plans.Method(name) : null;
            yield return new(Day.Date(run.Days[at]), method, Number(line, of.Session), Number(line, of.Step), Cell(line, of.Device) switch
            {
                { State: FactState.Known, Text: { } device } => NameFolding.Fold(device) == NoDevice ? null : device,
                { State: FactState.Missing } => null,
                _ => Unreadable,
            });
        }
    }

    private Said Number(int line, int place) => Cell(line, place) switch
    {
        { State: FactState.Known } cell => new(cell.Number, false),
        { State: FactState.Missing } => default,
        _ => new(null, true),
    };

    private DetailCell Cell(int line, int place) => place < 0 ? new DetailCell(line, place, FactState.Missing, 0, null) : _herd.Details.Of(line, place);

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
}

/// <summary>One row that marks treatment.</summary>
/// <param name="Date">The day.</param>
/// <param name="Method">The method that it names; null where it names none that the files have.</param>
/// <param name="Session">The session written there.</param>
/// <param name="Step">The day of the method written there.</param>
/// <param name="Device">What became of a device, as declared: <c>in</c>, <c>out</c>, <c>gone</c>; null where nothing is said.</param>
internal readonly record struct TreatmentRow(LocalDate Date, Method? Method, Said Session, Said Step, string? Device);

/// <summary>A number in a cell: known, blank, or one that cannot be read.</summary>
/// <param name="Number">The number; null where none is known.</param>
/// <param name="IsUnreadable">Whether something stands there that cannot be read.</param>
internal readonly record struct Said(double? Number, bool IsUnreadable);
