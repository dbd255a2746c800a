namespace Byrelaw.Records.Entering;

/// <summary>An entry that a row of a sheet becomes in <c>events.csv</c>.</summary>
/// <param name="Date">The day on which it was done.</param>
/// <param name="Animal">Her number.</param>
/// <param name="Kind">What was done; of what was not done, the kind that was not.</param>
/// <param name="Row">The row of the sheet.</param>
/// <param name="Line">The line of the sheet's file.</param>
public sealed record RecordedEntry(LocalDate Date, string Animal, Kind Kind, int Row, int Line)
{
    /// <summary>The program's own kind of a row that says that something was not done.</summary>
    internal const string NotDoneKind = "not done";

    /// <summary>Whether it says that this was not done; the reason is its note.</summary>
    public bool IsNotDone { get; init; }

    /// <summary>What was found; empty for an event.</summary>
    public string Value { get; init; } = "";

    /// <summary>The unit; empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Anything else that was written.</summary>
    public string Note { get; init; } = "";

    /// <summary>Details that were filled in, by their names.</summary>
    public ImmutableArray<(string Name, string Value)> Details { get; init; } = [];

    /// <summary>Whether something was given to her: a device that came out, or was gone, with no step of her method is nothing given.</summary>
    public bool GivesSomething => !IsNotDone && Kind is EventKind { Marks: Marks.Treatment } && !(NameFolding.Fold(Detail("device")) is "out" or "gone" && Detail("method").Length == 0);

    /// <summary>The value of a detail; empty for none.</summary>
    public string Detail(string name) => Details.FirstOrDefault(detail => NameFolding.Fold(detail.Name) == name).Value ?? "";
}
