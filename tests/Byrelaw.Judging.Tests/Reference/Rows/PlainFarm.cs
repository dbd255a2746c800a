namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A farm's records as a person would write them down: cells of text, right or wrong.</summary>
/// <param name="FactNames">Names of the fact columns, in order.</param>
/// <param name="Animals">Rows of <c>animals.csv</c>.</param>
/// <param name="Events">Rows of <c>events.csv</c>.</param>
public sealed record PlainFarm(ImmutableArray<string> FactNames, ImmutableArray<AnimalRow> Animals, ImmutableArray<EventRow> Events)
{
    /// <summary>Papers with boxes that were written.</summary>
    public ImmutableArray<PlainSheet> Sheets { get; init; } = [];

    /// <summary>What day it is; null where nobody says.</summary>
    public LocalDate? Today { get; init; }

    /// <summary>"Rows with `sheet row` do not count where a kind's reach is taken from its latest entry, and may lie after it", but not after today.</summary>
    public bool IsOfSheet(EventRow row) => row.SheetRow.Length > 0 && (Today is not { } today || CellReading.Day(row.Date) is not { } day || day <= DayNumber.Of(today));

    /// <summary>Names of the columns of details, in order.</summary>
    public ImmutableArray<string> DetailNames { get; init; } = [];

    /// <summary>The columns of details that stand in the file.</summary>
    public ImmutableArray<string> ColumnsOfDetails => DetailNames.Length > 0 || !Events.Any(row => row.Method.Length > 0) ? DetailNames : ["method"];

    /// <summary>What a row says in one of them.</summary>
    public string DetailOf(EventRow row, int place) => DetailNames.Length == 0 ? row.Method : place < row.Details.Length ? row.Details[place] : "";

    /// <summary>The line of <c>events.csv</c> that a row stands on: the heading is line 1.</summary>
    public static int LineOf(int row) => row + 2;
}

/// <summary>One row of <c>animals.csv</c>.</summary>
/// <param name="Number">The farm's own number.</param>
/// <param name="Born">A date, a month, a year, blank or nonsense.</param>
/// <param name="Sex"><c>F</c>, <c>M</c>, blank or nonsense.</param>
/// <param name="Mob">A mob's name or blank.</param>
/// <param name="Parity">A number, blank or nonsense.</param>
/// <param name="Facts">Cells of the fact columns, in the order of <see cref="PlainFarm.FactNames"/>.</param>
/// <param name="ParityOn">The day that the parity is of: a date, blank or nonsense.</param>
public sealed record AnimalRow(string Number, string Born, string Sex, string Mob, string Parity, ImmutableArray<string> Facts, string ParityOn = "");

/// <summary>One row of <c>events.csv</c>.</summary>
/// <param name="Date">ISO date, blank or nonsense.</param>
/// <param name="Animal">A number, <c>mob:NAME</c>, <c>herd</c>, blank or nonsense.</param>
/// <param name="Kind">An event, measure or test, or nonsense.</param>
/// <param name="Value">An amount, an answer, a mob's name, <c>pending</c>, <c>&lt;3</c>, blank or nonsense.</param>
/// <param name="Unit">The amount's unit, or blank.</param>
/// <param name="Recorded">The day it was entered; blank for its own date.</param>
/// <param name="Method">How it was done, on a farm that names no other column of a detail.</param>
public sealed record EventRow(string Date, string Animal, string Kind, string Value = "", string Unit = "", string Recorded = "", string Method = "")
{
    /// <summary>Cells of the columns of details, in the order of <see cref="PlainFarm.DetailNames"/>.</summary>
    public ImmutableArray<string> Details { get; init; } = [];

    /// <summary>The row of a sheet that it is of, <c>H1:2</c>; blank for none.</summary>
    public string SheetRow { get; init; } = "";
}

/// <summary>A paper with boxes.</summary>
/// <param name="Number">Its number.</param>
/// <param name="For">The day that it is for.</param>
/// <param name="Written">The day it was written.</param>
/// <param name="Replaces">The number of an earlier one of that day that it makes void; blank for none.</param>
/// <param name="Rows">Animal and kind of each row.</param>
public sealed record PlainSheet(string Number, LocalDate For, LocalDate Written, string Replaces, ImmutableArray<(string Animal, string Kind)> Rows);
