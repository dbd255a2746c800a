namespace Byrelaw.Planning.Naming;

/// <summary>An animal with a device in her, by the book: it went in, and nothing says that it came out or was gone. It is listed on every page until it is out.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Since">The day it went in.</param>
public sealed record DeviceIn(int Animal, string Number, LocalDate Since)
{
    /// <summary>The method whose device it is; null where the book names none.</summary>
    public Method? Method { get; init; }

    /// <summary>The day on which it is due out by its method; null where the book names none that says so.</summary>
    public LocalDate? DueOut => Method?.Steps.FirstOrDefault(step => step.Device == DeviceMove.In) is { } put && Method.Steps.FirstOrDefault(step => step.Device == DeviceMove.Out && step.Day > put.Day) is { } taken
        ? Since.PlusDays(taken.Day - put.Day) : null;

    /// <summary>All of them, in the order of the herd. What cannot be read counts as in: a device that was forgotten is worse than one looked for twice; and so does one on a sheet that is not on record.</summary>
    /// <param name="herd">The records.</param>
    /// <param name="plans">The methods: a step that puts a device in, or takes it out, does so without a word beside it too.</param>
    public static ImmutableArray<DeviceIn> Of(Herd herd, PlanStatements plans)
    {
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(plans);
        var rows = new TreatmentRows(herd, plans);
        var onSheets = herd.OpenRows.Where(row => row is { Animal: >= 0, Entry.Device: "in" }).GroupBy(row => row.Animal).ToDictionary(hers => hers.Key, hers => hers.Min(row => row.For));
        return !rows.Any && onSheets.Count == 0 ? [] :
        [
            .. from animal in Enumerable.Range(0, herd.Count)
               let put = PutIn(rows.Of(animal)) ?? MayBeIn(rows.Of(animal), onSheets, animal)
               where put is not null
               select new DeviceIn(animal, herd.Numbers[animal], put.Value.Day) { Method = put.Value.Method },
        ];
    }

    /// <summary>From the day of a sheet by which one was to go in, until it is on record that one came out later.</summary>
    private static (LocalDate Day, Method? Method)? MayBeIn(IEnumerable<TreatmentRow> rows, Dictionary<int, LocalDate> onSheets, int animal) =>
        onSheets.TryGetValue(animal, out var day) && !rows.Any(row => row.Date > day && MoveOf(row, (day, null)) == DeviceMove.Out) ? (day, null) : null;

    /// <summary>The day on which the device went in that is still in, and its method; null for none. Of two rows of one day that say both, it is in.</summary>
    private static (LocalDate Day, Method? Method)? PutIn(IEnumerable<TreatmentRow> rows)
    {
        (LocalDate Day, Method? Method)? put = null;
        foreach (var row in rows)
        {
            switch (MoveOf(row, put))
            {
                case DeviceMove.In:
                    put = (row.Date, row.Method ?? put?.Method);
                    break;
                case DeviceMove.Out when put is { } inside && row.Date > inside.Day:
                    put = null;
                    break;
            }
        }

        return put;
    }

    private static DeviceMove? MoveOf(TreatmentRow row, (LocalDate Day, Method? Method)? put) => row.Device is { } said
        ? NameFolding.Fold(said) is "out" or "gone" ? DeviceMove.Out : DeviceMove.In
        : row.Method is null || row.Step.IsUnreadable ? null
        : row.Method.Steps.FirstOrDefault(step => step.Day == (row.Step.Number ?? DayOf(row, put)))?.Device;

    /// <summary>The day of the method that a blank step is: the one that is due that day by the device that is in, else day 0.</summary>
    private static int DayOf(TreatmentRow row, (LocalDate Day, Method? Method)? put) =>
        put is { } inside && inside.Method == row.Method && Period.DaysBetween(inside.Day, row.Date) is var days && row.Method!.Steps.Any(step => step.Day == days) ? days : 0;
}
