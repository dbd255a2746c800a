namespace Byrelaw.Planning.Naming;

/// <summary>An animal with a device in her, by the book: it went in, and nothing says that it came out or was gone. It is listed on every page until it is out.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Since">The day it went in.</param>
public sealed record DeviceIn(int Animal, string Number, LocalDate Since)
{
    /// <summary>All of them, in the order of the herd. What cannot be read counts as in: a device that was forgotten is worse than one looked for twice.</summary>
    /// <param name="herd">The records.</param>
    /// <param name="plans">The methods: a step that puts a device in, or takes it out, does so without a word beside it too.</param>
    public static ImmutableArray<DeviceIn> Of(Herd herd, PlanStatements plans)
    {
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(plans);
        var rows = new TreatmentRows(herd, plans);
        return !rows.Any ? [] :
        [
            .. from animal in Enumerable.Range(0, herd.Count)
               let since = DayIn(rows.Of(animal))
               where since is not null
               select new DeviceIn(animal, herd.Numbers[animal], since.Value),
        ];
    }

    /// <summary>The day on which the device went in that is still in; null for none. Of two rows of one day that say both, it is in.</summary>
    private static LocalDate? DayIn(IEnumerable<TreatmentRow> rows)
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

        return put?.Day;
    }

    private static DeviceMove? MoveOf(TreatmentRow row, (LocalDate Day, Method? Method)? put) => row.Device is { } said
        ? NameFolding.Fold(said) is "out" or "gone" ? DeviceMove.Out : DeviceMove.In
        : row.Method is null || row.Step.IsUnreadable ? null
        : row.Method.Steps.FirstOrDefault(step => step.Day == (row.Step.Number ?? DayOf(row, put)))?.Device;

    /// <summary>The day of the method that a blank step is: the one that is due that day by the device that is in, else day 0.</summary>
    private static int DayOf(TreatmentRow row, (LocalDate Day, Method? Method)? put) =>
        put is { } inside && inside.Method == row.Method && Period.DaysBetween(inside.Day, row.Date) is var days && row.Method!.Steps.Any(step => step.Day == days) ? days : 0;
}
