namespace Byrelaw.Records.Embryos;

/// <summary>Reads the cells of one row of embryos or of a pedigree. What cannot be read is told of, and remembered: such a row is not believed.</summary>
internal sealed class EmbryoCells(RowText row, ColumnMap map, List<Diagnostic> problems)
{
    /// <summary>Whether every cell that was asked for could be read.</summary>
    public bool AreReadable { get; private set; } = true;

    /// <summary>Where a column stands; -1 where it does not.</summary>
    public int At(string column) => map[column];

    /// <summary>What stands in a column; null for nothing.</summary>
    public string? Text(string column)
    {
        // Of two columns of one name nobody knows which holds: what they say is not known, and no blank.
        AreReadable &= !map.IsDoubled(column);
        return map[column] is var cell and >= 0 && row.Saved(cell) is { Length: > 0 } text ? text : null;
    }

    /// <summary>A day; null for none.</summary>
    public LocalDate? Date(string column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (DateCell.TryRead(Encoding.UTF8.GetBytes(text), out var day))
        {
            return Day.Date(day);
        }

        Refuse(RecordDateProblems.NotADate(row, map[column]));
        return null;
    }

    /// <summary>A whole number from 1 to a most; null for none.</summary>
    public int? Whole(string column, int most)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= most)
        {
            return number;
        }

        Refuse(EmbryoProblems.NotACode(row, map[column], column, most));
        return null;
    }

    /// <summary>One of a few values, in whatever case; null for nothing.</summary>
    public string? OneOf(string column, params string[] values)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (Array.Find(values, value => NameFolding.Fold(value) == NameFolding.Fold(text)) is { } found)
        {
            return found;
        }

        Refuse(EmbryoProblems.NotOneOf(row, map[column], column, values));
        return null;
    }

    /// <summary>Tells of something that makes the row unreadable.</summary>
    public void Refuse(Diagnostic problem)
    {
        AreReadable = false;
        problems.Add(problem);
    }

    /// <summary>Tells of something that does not.</summary>
    public void Warn(Diagnostic problem) => problems.Add(problem);
}
