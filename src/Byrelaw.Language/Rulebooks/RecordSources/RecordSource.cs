namespace Byrelaw.Language.Rulebooks.RecordSources;

/// <summary>A file that holds a part of a farm's records, and what stands where in it: <c>from "diary.csv"</c>.</summary>
/// <param name="File">As written, within the folder of the records.</param>
/// <param name="Rows">What a row is about.</param>
/// <param name="Span">Where.</param>
public sealed record RecordSource(string File, SourceRows Rows, SourceSpan Span)
{
    /// <summary>Whether it holds messages of the ICAR Animal Data Exchange (JSON); these are read by a layout that is built in.</summary>
    public bool IsAde { get; init; }

    /// <summary>The time zone in which the farm's days are; null where nobody says.</summary>
    public string? TimesIn { get; init; }

    /// <summary>The sheet, of a workbook; null where nobody names one.</summary>
    public string? Sheet { get; init; }

    /// <summary>The row of the headings, from 1; headings over several rows are joined.</summary>
    public (int First, int Last) HeadingRows { get; init; } = (1, 1);

    /// <summary>What stands between cells.</summary>
    public char Separator { get; init; } = ',';

    /// <summary>How letters are written as bytes, such as <c>Windows-1252</c>; null for UTF-8, or what the file's own mark says.</summary>
    public string? LettersIn { get; init; }

    /// <summary>The day of which rows for each animal are true; null where nobody says.</summary>
    public LocalDate? AsAt { get; init; }

    /// <summary>How far it reaches; null for as far as the records do.</summary>
    public LocalDate? UpTo { get; init; }

    /// <summary>In which order dates stand.</summary>
    public DateOrder Dates { get; init; }

    /// <summary>Whether a comma stands before the tenths.</summary>
    public bool HasDecimalComma { get; init; }

    /// <summary>What stands between thousands: a comma, or a point (then a comma stands before the tenths); null for nothing.</summary>
    public char? Thousands { get; init; }

    /// <summary>Whether years are written with two digits.</summary>
    public bool HasShortYears { get; init; }

    /// <summary>What its columns say.</summary>
    public ImmutableArray<SourceColumn> Columns { get; init; } = [];

    /// <summary>What holds for every row.</summary>
    public ImmutableArray<EveryRow> EveryRow { get; init; } = [];

    /// <summary>Rows that the farm leaves out.</summary>
    public ImmutableArray<CellSaid> RowsLeftOut { get; init; } = [];

    /// <summary>Headings of columns that the farm leaves out.</summary>
    public ImmutableArray<string> ColumnsLeftOut { get; init; } = [];

    /// <summary>Headings of the columns that its lines read.</summary>
    public IEnumerable<string> HeadingsRead =>
        Columns.Select(column => column.Heading)
            .Concat(Columns.SelectMany(column => column.Cells.SelectMany(cell => cell.Parts.Select(part => part.Heading).Append(cell.Where?.Heading)).Append(column.DatedIn)).OfType<string>())
            .Concat(RowsLeftOut.Select(row => row.Heading));

    /// <summary>Headings that another source reads in the same table: a sheet with several days in a row is named once for each.</summary>
    /// <param name="all">All sources of the farm.</param>
    public IEnumerable<string> HeadingsReadBeside(ImmutableArray<RecordSource> all) =>
        all.Where(other => other != this && !other.IsBroken && other.File == File && other.Sheet == Sheet && other.HeadingRows == HeadingRows).SelectMany(other => other.HeadingsRead);

    /// <summary>Whether it holds what <c>record</c> wrote beside the farm's own files: no line names it, and no promise ends with it.</summary>
    public bool IsRecorded { get; init; }

    /// <summary>Whether a line of it cannot be read, so that nothing it might have said is known.</summary>
    public bool IsBroken { get; init; }
}

/// <summary>A column that says something.</summary>
/// <param name="Heading">As written.</param>
/// <param name="Cell">The whole cell.</param>
public sealed record CellSaid(string Heading, string Cell);

/// <summary>What holds for every row: <c>sex is F</c>.</summary>
/// <param name="What">What.</param>
/// <param name="Value">As the landed files write it.</param>
/// <param name="Span">Where.</param>
public sealed record EveryRow(SourceTarget What, string Value, SourceSpan Span)
{
    /// <summary>Of a detail: whose rows it fills where they are blank; null where it is no detail.</summary>
    public Kind? Kind { get; init; }
}
