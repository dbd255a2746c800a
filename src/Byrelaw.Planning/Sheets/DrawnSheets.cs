using Byrelaw.Records.Ledger;

namespace Byrelaw.Planning.Sheets;

/// <summary>
/// The papers with boxes of one morning. A box for a hormone stands only where everything that the safety rules and the floor look at is written down up to the day before;
/// else devices that are due out have a paper of their own, and everything else is a preview.
/// </summary>
public sealed class DrawnSheets
{
    private readonly Plan _plan;
    private readonly LocalDate _day;
    private readonly EventKind? _given;
    private readonly EventKind? _mating;
    private readonly StepParts _parts;
    private readonly TreatmentRows _onRecord;

    private DrawnSheets(Plan plan, LocalDate day)
    {
        (_plan, _day) = (plan, day);
        _given = TreatmentKind.Of(plan.Draft.Herd.Vocabulary);
        _mating = plan.Draft.Herd.Vocabulary.FindKind("mating") as EventKind;
        _parts = new StepParts(plan.Draft.Herd.Vocabulary);
        _onRecord = new TreatmentRows(plan.Draft.Herd, plan.Draft.Rulebook.Plans);
    }

    /// <summary>Draws them.</summary>
    /// <param name="plan">Planned on the day of drawing.</param>
    /// <param name="day">The morning.</param>
    /// <param name="earlier">Rows that are open on earlier sheets of that morning, which these make void.</param>
    public static ImmutableArray<DrawnSheet> Of(Plan plan, LocalDate day, IReadOnlyList<OpenRow> earlier)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Sessions.IsEmpty)
        {
            return [];
        }

        var (drawn, heads) = (new DrawnSheets(plan, day), new SheetHeads(plan));
        DrawnSheet[] sheets =
        [
            .. HormoneMornings.Of(plan, heads).Where(sheet => sheet.Date == day).Select(drawn.OfHormones).Concat(FindingMornings.On(plan, heads, day).Select(drawn.OfFindings))
                .Where(sheet => !sheet.Rows.IsEmpty || !sheet.Short.IsEmpty).OrderBy(sheet => sheet.Work, StringComparer.Ordinal).ThenBy(sheet => sheet.Morning.Session.Number),
        ];
        return [.. sheets.Select(sheet => drawn.WithTakenOff(sheet, earlier.Where(row => ReferenceEquals(sheet, Successor(row.Sheet, sheets))).ToList()))];
    }

    /// <summary>The sheet that makes an earlier one void: of its work and session, else the first of its work; null for none.</summary>
    public static DrawnSheet? Successor(Sheet earlier, IReadOnlyList<DrawnSheet> sheets)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(sheets);
        return sheets.FirstOrDefault(sheet => !sheet.Rows.IsEmpty && sheet.Work == earlier.Work && sheet.Morning.Session.Number == earlier.Session)
            ?? sheets.FirstOrDefault(sheet => !sheet.Rows.IsEmpty && sheet.Work == earlier.Work);
    }

    private DrawnSheet OfHormones(HormoneSheet sheet)
    {
        var programme = sheet.Session.Session.Programme;
        var lists = new[] { ProgrammeLists.Treatment(programme)?.List, sheet.Rows.Any(row => row.IsDonor) ? sheet.Session.Session.Donors?.Choice.List : null }.OfType<string>();
        var isShort = SafetyReach.Short(_plan.Draft.Rulebook, _plan.Draft.Herd, lists, _day.PlusDays(-1));
        var rows = new List<DrawnRow>();
        foreach (var (row, isSpare) in Ordered(sheet.Rows).Select(row => (row, false)).Concat(sheet.Spares.Select(row => (row, true))))
        {
            // Without all records up to the day before nobody is given anything: a device comes out all the same.
            var stands = !isShort.IsEmpty && row.IsGiven ? row with { NotGiven = new(null) } : row;
            if (_given is not null && (stands.IsGiven || stands.DeviceComesOut) && !(isSpare && !isShort.IsEmpty) && StillToDo(stands) is { } due)
            {
                rows.Add(new DrawnRow(rows.Count + 1, due.Who.Number, Writes(due)) { Who = due.Who, Hormone = due, IsSpare = isSpare });
            }
        }

        return new DrawnSheet(sheet, [.. rows]) { Short = sheet.Rows.Any(row => row.IsGiven) || !sheet.Spares.IsEmpty || !sheet.ToAsk.IsEmpty ? isShort : [] };
    }

    /// <summary>What is on record of that day is not done again; a device that did not come out yet does.</summary>
    private HormoneRow? StillToDo(HormoneRow row)
    {
        var today = _onRecord.Of(row.Who.Animal).Where(one => one.Date == _day).ToList();
        return today.Count == 0 ? row
            : row.DeviceComesOut && !today.Exists(one => one.Device is { } said && NameFolding.Fold(said) is "out" or "gone") ? row with { NotGiven = row.NotGiven ?? new(null) }
            : null;
    }

    private ImmutableArray<SheetEntry> Writes(HormoneRow row)
    {
        // A donor is inseminated by her method too: that is a service, and no hormone. Where both are done, both are written.
        var (services, gives) = row.IsDonor ? (row.Steps.Any(_parts.Serve), row.Steps.Any(_parts.Give)) : (false, true);
        if (services && !gives)
        {
            return [new SheetEntry(_mating!.Name)];
        }

        var device = !_given!.Details.Any(detail => NameFolding.Fold(detail.Name) == "device") ? null : row.DeviceComesOut ? "out" : row.DeviceGoesIn ? "in" : null;
        return services ? [new SheetEntry(_given.Name, device), new SheetEntry(_mating!.Name)] : [new SheetEntry(_given.Name, device)];
    }

    private DrawnSheet OfFindings(FindingSheet sheet) => new(
        sheet, [.. Ordered(sheet.Rows).Select((row, i) => new DrawnRow(i + 1, row.Who.Number, [.. row.Records.Select(record => new SheetEntry(record.Kind.Name))]) { Who = row.Who, Finding = row })]);

    private IEnumerable<HormoneRow> Ordered(IEnumerable<HormoneRow> rows) => rows.OrderBy(row => row.IsGiven ? 0 : 1).ThenBy(row => MobOf(row.Who), StringComparer.Ordinal);

    private IEnumerable<FindingRow> Ordered(IEnumerable<FindingRow> rows) => rows.OrderBy(row => MobOf(row.Who), StringComparer.Ordinal);

    private string MobOf(SheetAnimal who)
    {
        var mobs = _plan.Draft.Herd.Mobs;
        var mob = mobs.At(who.Animal, _plan.Draft.Herd.Coverage.KnownDay);
        return mob >= 0 ? mobs.Names[mob] : "";
    }

    /// <summary>What an earlier sheet of the morning would write of whoever is not on this one, or not for that: it may have been done, and is to be said here.</summary>
    private DrawnSheet WithTakenOff(DrawnSheet sheet, IReadOnlyList<OpenRow> earlier)
    {
        var herd = _plan.Draft.Herd;
        var stands = sheet.Rows.SelectMany(row => row.Writes.Select(entry => (row.Number, entry))).ToHashSet();
        DrawnRow[] off =
        [
            .. earlier.Where(row => row.Row.Animal is { } number && !stands.Contains((number, row.Entry))).GroupBy(row => (row.Sheet.Number, row.Row.Row)).Select((rows, i) => new DrawnRow(
                sheet.Rows.Length + i + 1, rows.First().Row.Animal!, [.. rows.Select(row => row.Entry)])
            {
                Who = herd.Find(rows.First().Row.Animal!) is >= 0 and var animal ? new SheetAnimal(animal, herd.Numbers[animal], null) : null,
                TakenOff = $"{rows.Key.Number}:{rows.Key.Row}",
            }),
        ];
        return sheet with { Rows = [.. sheet.Rows, .. off] };
    }
}
