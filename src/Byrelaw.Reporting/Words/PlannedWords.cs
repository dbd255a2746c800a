namespace Byrelaw.Reporting.Words;

/// <summary>What is planned before a list's days and taken as done: it stands on no record, and is told wherever the list is.</summary>
public static class PlannedWords
{
    /// <summary><c>Taken as done, because it is planned: egg collection of 1021 on 12 October.</c>; empty where nothing is planned.</summary>
    public static string Of(ListReport list)
    {
        ArgumentNullException.ThrowIfNull(list);
        if (list.List.Planned.IsEmpty)
        {
            return "";
        }

        var days = list.List.Planned.GroupBy(row => (row.Kind, row.Date)).ToList();
        return $"Taken as done, because it is planned: {string.Join("; ", days.Select(day => $"{day.Key.Kind} of {Phrases.And([.. day.Select(row => row.Animal)])} on {list.Long(day.Key.Date)}"))}. "
            + $"It is not on record; once {(days.Count == 1 ? "that day is" : "a day is")} past only the book counts.";
    }

    /// <summary>The same of one animal; empty where nothing is planned of her.</summary>
    public static string Of(AnimalReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return Of(report.On with { List = report.On.List with { Planned = [.. report.On.List.Planned.Where(row => row.Animal == report.Animal.Number)] } });
    }

    /// <summary>Where evidence stands that is planned.</summary>
    internal const string Place = "planned";
}
