using Byrelaw.Records.Entering;

namespace Byrelaw.Planning.Entering;

/// <summary>A heat that is timed: every step of her method is on record on its day.</summary>
/// <param name="Animal">Her number.</param>
/// <param name="Method">The method that counts as heat.</param>
/// <param name="Start">Her own day 0.</param>
/// <param name="Row">The row of the sheet by which it came to that; 0 where the steps were on record before, and its day has come since.</param>
/// <param name="Line">The line of the sheet's file.</param>
/// <param name="WhyNot">Why none is added, where the last step of her method is on this sheet; null where one is.</param>
public sealed record TimedHeat(string Animal, Method Method, LocalDate Start, int Row, int Line, string? WhyNot)
{
    /// <summary>The day that counts as heat.</summary>
    public LocalDate Day => Start.PlusDays(Method.HeatDay!.Value);

    /// <summary>The entry, with its steps in the note.</summary>
    public RecordedEntry Entry(EventKind timedHeat) => new(Day, Animal, timedHeat, Row, Line)
    {
        Note = $"{Method.Name}: {string.Join(", ", Method.Steps.Select(step => step.Day).Distinct().Select(day => $"day {day} on {NodaTime.Text.LocalDatePattern.Iso.Format(Start.PlusDays(day))}"))}",
    };
}

/// <summary>
/// Which heats are timed once a sheet is on record. A step missing, late or not done, a device that was gone, or a heat that was seen since day 0: none is.
/// </summary>
public sealed class TimedHeats
{
    private readonly Herd _herd;
    private readonly TreatmentRows _rows;
    private readonly Kind? _heat;
    private readonly EventKind? _timed;
    private readonly LocalDate _today;

    // What was made ready so long ago is of no transfer that is to come.
    private const int DaysBack = 30;

    private TimedHeats(Herd herd, PlanStatements plans, LocalDate today)
    {
        _today = today;
        (_herd, _rows) = (herd, new TreatmentRows(herd, plans));
        _heat = herd.Vocabulary.FindKind("heat");
        _timed = KindOf(herd.Vocabulary);
    }

    /// <summary>The event of a timed heat; null where no file declares it: then none is written.</summary>
    public static EventKind? KindOf(Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        return vocabulary.TimedHeat?.Timed;
    }

    /// <summary>Those that come of some entries.</summary>
    /// <param name="herd">As it is with them.</param>
    /// <param name="plans">The methods.</param>
    /// <param name="entries">What the sheet wrote.</param>
    /// <param name="today">The day on which it is recorded: no heat is written that is to come, but with the next sheet after its day.</param>
    public static ImmutableArray<TimedHeat> Of(Herd herd, PlanStatements plans, IReadOnlyList<RecordedEntry> entries, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(entries);
        var heats = new TimedHeats(herd, plans, today);
        return heats._timed is null ? [] : [.. Enumerable.Range(0, herd.Count).SelectMany(animal => heats.Of(
            animal, entries.LastOrDefault(entry => entry is { IsNotDone: false, Kind: EventKind { Marks: Marks.Treatment } } && entry.Animal == herd.Numbers[animal])))];
    }

    private IEnumerable<TimedHeat> Of(int animal, RecordedEntry? entry)
    {
        TreatmentRow[] hers = [.. _rows.Of(animal)];
        var latest = hers.Where(row => row.Method is { HeatDay: not null, IsForDonors: false } && row.Step is { Number: 0, IsUnreadable: false }).Select(row => (row.Method, row.Date)).LastOrDefault();
        if (latest.Method is not { } method || IsOnRecord(animal, _timed!, latest.Date, latest.Date.PlusDays(method.HeatDay!.Value + 1)))
        {
            yield break;
        }

        var (last, day) = (latest.Date.PlusDays(method.Steps.Max(step => step.Day)), latest.Date.PlusDays(method.HeatDay.Value));
        var why = WhyNot(animal, hers, method, latest.Date);
        if (entry is not null && entry.Date >= last)
        {
            // The last step of hers is on this sheet: it is told whether her heat is timed by it, and why not.
            yield return new TimedHeat(entry.Animal, method, latest.Date, entry.Row, entry.Line, why ?? (day > _today ? $"its day, {Long(day)}, is to come: it is written with the next sheet that is recorded from then on" : null));
        }
        else if (why is null && day <= _today && day >= _today.PlusDays(-DaysBack))
        {
            yield return new TimedHeat(_herd.Numbers[animal], method, latest.Date, 0, 0, null);
        }
    }

    private static string Long(LocalDate day) => day.ToString("d MMMM uuuu", System.Globalization.CultureInfo.InvariantCulture);

    private string? WhyNot(int animal, TreatmentRow[] hers, Method method, LocalDate start)
    {
        foreach (var step in method.Steps)
        {
            var row = hers.Where(one => one.Date == start.PlusDays(step.Day) && one.Method == method && one.Step is { IsUnreadable: false } && (one.Step.Number ?? step.Day) == step.Day).Select(one => (TreatmentRow?)one).FirstOrDefault();
            if (row is not { } given)
            {
                return $"the step of day {step.Day} is not on record on its day";
            }

            if (step.Device == DeviceMove.Out && (given.Device is null || NameFolding.Fold(given.Device) != "out"))
            {
                return "nobody says that her device was there when it was taken out";
            }
        }

        return _heat is not null && IsOnRecord(animal, _heat, start, start.PlusDays(method.HeatDay!.Value)) ? "she was seen in heat since day 0" : null;
    }

    private bool IsOnRecord(int animal, Kind kind, LocalDate from, LocalDate to)
    {
        var run = _herd.Runs[kind.Id];
        for (var at = run.Starts[animal]; at < run.Starts[animal + 1]; at++)
        {
            if (run.Days[at] >= Byrelaw.Records.Herds.Day.Number(from) && run.Days[at] <= Byrelaw.Records.Herds.Day.Number(to))
            {
                return true;
            }
        }

        return false;
    }
}
