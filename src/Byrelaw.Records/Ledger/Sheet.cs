namespace Byrelaw.Records.Ledger;

/// <summary>A paper with boxes, as the ledger has it: what each of its rows would write.</summary>
/// <param name="Number"><c>H1004-5b20e1</c>.</param>
/// <param name="For">The day that it is for.</param>
/// <param name="Written">The day on which it was written.</param>
/// <param name="Session">The session; null where none is meant.</param>
/// <param name="Work">The kind of work: H, S, L, T, C or V; W for no paper, but a person's word that what these rows would write was never to be written.</param>
/// <param name="Replaces">Sheets that it makes void.</param>
/// <param name="Rows">Its rows, spares among them.</param>
public sealed record Sheet(string Number, LocalDate For, LocalDate Written, int? Session, string Work, ImmutableArray<string> Replaces, ImmutableArray<SheetRow> Rows)
{
    /// <summary>The programme that it was drawn for, by its file's name; null where nobody said. One programme's sheet never makes another's void.</summary>
    public string? Programme { get; init; }

    /// <summary>Of a person's word: why. Null for a paper.</summary>
    public string? Why { get; init; }

    /// <summary>Whether it takes back what somebody's own file would write: a wrong file, or a column that was none.</summary>
    public bool IsWithdrawal => Work == "W";

    /// <summary>Whether it is somebody's own file.</summary>
    public bool IsOwn => Work == "V";
}

/// <summary>A row of a sheet.</summary>
/// <param name="Row">Its number on the sheet.</param>
/// <param name="Animal">Her number; null where it cannot be read: then it may be anyone.</param>
/// <param name="Embryo">The embryo's label; null for none.</param>
/// <param name="Writes">What it would write.</param>
public sealed record SheetRow(int Row, string? Animal, string? Embryo, ImmutableArray<SheetEntry> Writes)
{
    /// <summary>Its own day; null for the sheet's.</summary>
    public LocalDate? For { get; init; }
}

/// <summary>One entry that a row would write.</summary>
/// <param name="Kind">An event, measure or test, as declared; in a file of somebody else's that was refused, what stands above the column.</param>
/// <param name="Device">What becomes of a device: <c>in</c> or <c>out</c>; null for none.</param>
public sealed record SheetEntry(string Kind, string? Device = null);
