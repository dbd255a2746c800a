namespace Byrelaw.Judging.Tests.UnsafeReadings;

/// <summary>A file of records that a case changes: rows by the names of their columns.</summary>
internal sealed class CaseTable
{
    private readonly List<string> _columns;
    private readonly List<Dictionary<string, string>> _rows;

    public CaseTable(string text) => (_columns, _rows) = Parse(text);

    /// <summary>Adds rows; columns that are new become columns of the file.</summary>
    public void Add(string? text)
    {
        if (text is not null)
        {
            var (columns, rows) = Parse(text);
            _columns.AddRange(columns.Except(_columns));
            _rows.AddRange(rows);
        }
    }

    /// <summary>Sets cells of rows that are there, found by the first column.</summary>
    public void Set(string? text)
    {
        if (text is null)
        {
            return;
        }

        var (columns, rows) = Parse(text);
        _columns.AddRange(columns.Except(_columns));
        foreach (var row in rows)
        {
            var there = _rows.Single(one => one[columns[0]] == row[columns[0]]);
            foreach (var column in columns.Where(row.ContainsKey))
            {
                there[column] = row[column];
            }
        }
    }

    /// <summary>Takes rows out; each must be there.</summary>
    public void Remove(string? text)
    {
        foreach (var line in (text ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var cells = line.Split(',');
            var removed = _rows.RemoveAll(row => _columns.Zip(cells).All(pair => row.GetValueOrDefault(pair.First, "") == pair.Second));
            removed.ShouldBe(1, line);
        }
    }

    public override string ToString() => string.Join(',', _columns) + "\n"
        + string.Concat(_rows.Select(row => string.Join(',', _columns.Select(column => Quoted(row.GetValueOrDefault(column, "")))) + "\n"));

    private static string Quoted(string cell) => cell.AsSpan().ContainsAny(',', '"') ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;

    private static (List<string> Columns, List<Dictionary<string, string>> Rows) Parse(string text)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        List<string> columns = [.. lines[0].Split(',')];
        return (columns, [.. lines.Skip(1).Select(line => columns.Zip(line.Split(',')).ToDictionary(pair => pair.First, pair => pair.Second))]);
    }
}
