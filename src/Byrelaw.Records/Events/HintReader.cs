using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Events;

/// <summary>Reads what a row tells of beside what it is read as: by the name of a farm's own kind, and in columns that nobody reads. For one thread.</summary>
internal sealed class HintReader(EventReading reading, EventStage stage, MayBeAnother others)
{
    private readonly int[] _beside = [.. new[] { reading.Columns.Unit, reading.Columns.Sample, reading.Columns.Recorded }.Where(column => column >= 0)];
    private readonly Kind?[] _byHeading = [.. reading.Columns.Unknown.Select(heading => FloorHeadings.MayBe(heading, reading.Vocabulary))];

    /// <summary>A word that slipped into a cell beside its own: <c>AI</c> in the unit, in the number of the sample, in the day of entry. Of a row of no known kind nothing is read: it may be anything as it is.</summary>
    public void ReadCells(CsvRows row, Kind? kind, RowSubject subject, int? day, int line)
    {
        if (kind is null)
        {
            return;
        }

        foreach (var column in _beside)
        {
            var cell = row.Cell(column);
            if (!cell.IsEmpty && cell.Length <= FloorSigns.LongestCell && column != row.CutCell && others.ByCellBeside(Encoding.UTF8.GetString(cell), kind) is { } other)
            {
                stage.Hint(subject, other, day, line);
            }
        }
    }

    /// <summary>Reads a row whose date, animal and kind are known.</summary>
    public void Read(CsvRows row, Kind kind, RowSubject subject, int day, int line)
    {
        if (others.ByName(kind) is { } named)
        {
            stage.Hint(subject, named, day, line);
        }

        ReadCells(row, kind, subject, day, line);
        for (var i = 0; i < reading.Columns.UnknownCells.Length; i++)
        {
            var cell = row.Cell(reading.Columns.UnknownCells[i]);
            if (cell.IsEmpty || (cell.Length > FloorSigns.LongestCell && _byHeading[i] is not TestKind) || reading.Columns.UnknownCells[i] == row.CutCell)
            {
                continue;
            }

            var (heading, text) = (reading.Columns.Unknown[i], Encoding.UTF8.GetString(cell));
            var other = others.ByCell(heading, text, kind, Encoding.UTF8.GetString(row.Cell(reading.Columns.Value)))
                ?? others.ByOwnDetail(heading, text, kind, Encoding.UTF8.GetString(row.Cell(reading.Columns.Value)))
                ?? (_byHeading[i] is TestKind hinted && hinted.Id != kind.Id && !FloorHeadings.SaysNone(text) ? hinted : null);
            if (other is not null && !reading.IsSaidNot(heading, text, other))
            {
                stage.Hint(subject, other, day, line);
            }
        }
    }
}
