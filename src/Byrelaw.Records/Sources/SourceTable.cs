namespace Byrelaw.Records.Sources;

/// <summary>The headings and rows of one source.</summary>
/// <param name="Shown">The file, as messages name it.</param>
/// <param name="Headings">The headings as they stand there.</param>
/// <param name="HeadingText">The heading row, for messages.</param>
/// <param name="HeadingRow">The number of the last heading row.</param>
/// <param name="Rows">The rows below, in order.</param>
internal sealed record SourceTable(string Shown, IReadOnlyList<string> Headings, string HeadingText, int HeadingRow, IReadOnlyList<SourceRow> Rows)
{
    /// <summary>Whether it is a sheet of a workbook.</summary>
    public bool IsSheet { get; init; }

    private readonly Dictionary<string, int> _found = new(StringComparer.Ordinal);

    /// <summary>The column with a heading; -1 where there is none, or two.</summary>
    public int Find(string heading)
    {
        if (!_found.TryGetValue(heading, out var column))
        {
            _found.Add(heading, column = Look(heading));
        }

        return column;
    }

    /// <summary>The row with a number.</summary>
    public SourceRow Row(int number)
    {
        var (low, high) = (0, Rows.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Rows[middle].Number < number ? (middle + 1, high) : (low, middle);
        }

        return Rows[low];
    }

    private int Look(string heading)
    {
        var folded = NameFolding.Fold(heading);
        var found = -1;
        for (var column = 0; column < Headings.Count; column++)
        {
            if (NameFolding.Fold(Headings[column]) != folded)
            {
                continue;
            }

            if (found >= 0)
            {
                return -1;
            }

            found = column;
        }

        return found;
    }
}
