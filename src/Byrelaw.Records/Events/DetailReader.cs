namespace Byrelaw.Records.Events;

/// <summary>Reads the details of entries. One that cannot be read is lost, and never the entry. For one thread.</summary>
internal sealed class DetailReader(EventReading reading, EventStage stage, MayBeAnother others)
{
    private readonly Dictionary<(int Kind, int Detail), FactReader> _readers = [];
    private readonly Dictionary<string, bool> _hinted = new(StringComparer.Ordinal);

    /// <summary>Reads the cells of a row whose date, animal and kind are known.</summary>
    public void Read(CsvRows row, Kind kind, RowSubject subject, int day, int line)
    {
        var isLost = false;
        foreach (var column in reading.Columns.Details)
        {
            var detail = column.DetailOf[kind.Id];
            if (column.Cell < 0 || column.Cell == row.CutCell)
            {
                if (detail >= 0)
                {
                    stage.Details.Add(new DetailCell(line, detail, FactState.Unreadable, 0, null));
                }

                continue;
            }

            var text = row.Cell(column.Cell);
            if (text.IsEmpty)
            {
                continue;
            }

            if (detail < 0)
            {
                var other = others.ByStrangeDetail(column, Encoding.UTF8.GetString(text), kind);
                stage.Problems.Add(DetailProblems.NoSuchDetail(row.Text(), column.Cell, kind, column.Name, other));
                Hint(other, subject, day, line);
                LoseWhatHasNoColumn(kind, line, ref isLost);
            }
            else
            {
                stage.Details.Add(Read(row, text, kind, detail, column.Cell, line));
                Hint(IsHinted(column) ? others.ByOwnDetail(column.Name, Encoding.UTF8.GetString(text), kind, ValueOf(row)) : null, subject, day, line);
                Hint(kind.Details[detail].Type is FactType.Text or FactType.OneOf ? others.ByCell(column.Name, Encoding.UTF8.GetString(text), kind, ValueOf(row)) : null, subject, day, line);
            }
        }
    }

    /// <summary>Few columns of details have a name that is hinted, and most cells stand under others.</summary>
    private bool IsHinted(DetailColumn column)
    {
        if (!_hinted.TryGetValue(column.Name, out var isHinted))
        {
            _hinted.Add(column.Name, isHinted = others.IsHinted(column.Name));
        }

        return isHinted;
    }

    private void Hint(Kind? other, RowSubject subject, int day, int line)
    {
        if (other is not null)
        {
            stage.Hint(subject, other, day, line);
        }
    }

    private string ValueOf(CsvRows row) => Encoding.UTF8.GetString(row.Cell(reading.Columns.Value));

    /// <summary>What stands under the name of another kind's detail may be the detail that has no column: it is not blank, and cannot be read.</summary>
    private void LoseWhatHasNoColumn(Kind kind, int line, ref bool isLost)
    {
        for (var place = 0; place < kind.Details.Length && !isLost; place++)
        {
            if (!reading.Columns.Details.Any(column => column.DetailOf[kind.Id] == place))
            {
                stage.Details.Add(new DetailCell(line, place, FactState.Unreadable, 0, null));
            }
        }

        isLost = true;
    }

    private DetailCell Read(CsvRows row, ReadOnlySpan<byte> text, Kind kind, int detail, int cell, int line)
    {
        if (!_readers.TryGetValue((kind.Id, detail), out var reader))
        {
            _readers.Add((kind.Id, detail), reader = new FactReader(AsFact(kind.Details[detail]), cell));
        }

        var problem = reader.Read(row, text, out var number, out var said);
        problem ??= kind.Details[detail].Type == FactType.Text && NotKnownCell.Is(text) ? DetailProblems.NotKnown(row.Text(), cell, kind.Details[detail].Name) : null;
        if (problem is null && kind.Details[detail].Scale is { } scale && (number < scale.From || number > scale.To))
        {
            problem = ValueProblems.OffScale(row.Text(), cell, kind.Details[detail].Name, scale);
        }

        if (problem is not null)
        {
            stage.Problems.Add(DetailProblems.Lost(problem, kind));
            return new DetailCell(line, detail, FactState.Unreadable, 0, null);
        }

        return new DetailCell(line, detail, FactState.Known, number, said);
    }

    private static Fact AsFact(EntryDetail detail) =>
        new(detail.Name, [], detail.Declared) { Id = 0, Type = detail.Type, Values = detail.Values, Unit = detail.Unit };
}
