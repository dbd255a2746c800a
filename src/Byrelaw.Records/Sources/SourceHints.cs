using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Sources;

/// <summary>
/// What a row of a source tells of a calf in cells that nobody reads: a column without a line, or a text of the kind column that is left out. Such a row is a pregnancy test too, whose result is not in.
/// </summary>
internal sealed class SourceHints
{
    /// <summary>What says more than so many letters is a remark.</summary>
    private const int Longest = 40;

    private readonly TranslatedSource _source;
    private readonly ImmutableArray<LeftOut> _saidNot;
    private readonly FloorSigns _signs;
    private readonly (int Place, string Heading)[] _notRead;

    /// <summary>Of one source.</summary>
    public SourceHints(TranslatedSource source, Vocabulary vocabulary, RecordKeeping keeping)
    {
        (_source, _saidNot, _signs) = (source, keeping.LeaveOut, new FloorSigns(vocabulary));
        Test = source.Source.IsAde ? null : vocabulary.FindKind("pregnancy test") as TestKind;
        var read = source.Source.Columns.Select(column => column.Heading)
            .Concat(source.Source.Columns.SelectMany(column => column.Cells.SelectMany(cell => cell.Parts.Select(part => part.Heading).Append(cell.Where?.Heading)).Append(column.DatedIn)).OfType<string>())
            .Concat(source.Source.RowsLeftOut.Select(row => row.Heading)).Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        _notRead = [.. source.Table.Headings.Select((heading, place) => (place, heading)).Where(one => one.heading.Length > 0 && !read.Contains(NameFolding.Fold(one.heading)) && !FloorSigns.IsOfOthers(one.heading))];
    }

    /// <summary>The pregnancy test; null where there is none, or where a row says what it is by itself.</summary>
    public TestKind? Test { get; }

    /// <summary>Whether a row tells of a calf beside what is read of it.</summary>
    public bool TellsOfACalf(SourceRow row)
    {
        if (Test is null)
        {
            return false;
        }

        foreach (var (place, heading) in _notRead)
        {
            if (Says(row[place], heading))
            {
                return true;
            }
        }

        return _source.Column("kind") is { } kinds && _source.Cell(kinds, row, out var meaning) is var cell && meaning is { Is: IsLeftOut } left
            && !(left.Where is { } where && FloorHeadings.SaysNone(where.Cell)) && Says(cell, kinds.Heading);
    }

    private bool Says(string cell, string heading) =>
        cell.Length is > 0 and <= Longest && _signs.In(cell) is { } kind && kind.Id == Test!.Id && !_saidNot.IsSaid(heading, cell, kind);
}
