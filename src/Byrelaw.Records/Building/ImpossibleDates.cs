namespace Byrelaw.Records.Building;

/// <summary>A row whose date cannot be: after the known day, or before the animal was born.</summary>
/// <param name="Gap">What it might have said.</param>
/// <param name="Born">The first day that would have been possible; null for a row after the known day.</param>
internal readonly record struct ImpossibleRow(Gap Gap, int? Born);

/// <summary>
/// Takes rows out whose date cannot be; each leaves a gap on any day. Where a quotation mark is never closed, rows behind its
/// line may be part of its cell: they are taken out too, and what they might have said stands in that line's gap. Rows that are supposed, behind all
/// that are read, may be of days to come; rows of sheets may lie after the known day, for they say what they say and move nothing.
/// </summary>
internal sealed class ImpossibleDates(int knownDay, AnimalRow[] animals, int lastLine, int supposedAfter, IReadOnlySet<int> ofSheets)
{
    private readonly Lock _gate = new();

    /// <summary>What was taken out.</summary>
    public List<ImpossibleRow> Found { get; } = [];

    /// <summary>Goes through rows about single animals.</summary>
    public void TakeOut<TResult>(int kind, ChunkedList<Staged<TResult>> rows)
        where TResult : struct
    {
        for (var chunk = 0; chunk < rows.ChunkCount; chunk++)
        {
            foreach (ref var row in rows.Chunk(chunk))
            {
                if (row.Line > lastLine && row.Line <= supposedAfter)
                {
                    row.Animal = Staged<TResult>.TakenOut;
                    continue;
                }

                var born = animals[row.Animal].BornFirst;
                if (IsTooLate(row.Day, row.Line) || row.Day < born)
                {
                    Add(new ImpossibleRow(new Gap(row.Animal, kind, Day.Start, Day.End, row.Line), row.Day < born ? born : null));
                    row.Animal = Staged<TResult>.TakenOut;
                }
            }
        }
    }

    /// <summary>Goes through rows about mobs and the herd, and gives those that are possible.</summary>
    public List<GroupRow> TakeOut(IEnumerable<GroupRow> rows)
    {
        var possible = new List<GroupRow>();
        foreach (var row in rows)
        {
            if (IsTooLate(row.Day, row.Line))
            {
                Add(new ImpossibleRow(new Gap(-1, row.Kind, Day.Start, Day.End, row.Line), null));
            }
            else if (row.Line <= lastLine || row.Line > supposedAfter)
            {
                possible.Add(row);
            }
        }

        return possible;
    }

    private bool IsTooLate(int day, int line) => day > knownDay && line <= supposedAfter && !ofSheets.Contains(line);

    private void Add(ImpossibleRow row)
    {
        lock (_gate)
        {
            Found.Add(row);
        }
    }
}
