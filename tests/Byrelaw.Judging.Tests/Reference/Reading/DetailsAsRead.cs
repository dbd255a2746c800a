namespace Byrelaw.Judging.Tests.Reference;

/// <summary>One cell of a detail.</summary>
/// <param name="Text">What stands there, where it can be read; null else.</param>
/// <param name="Number">The same, of a number.</param>
/// <param name="IsBlank">Nothing stands there, or there is no such column.</param>
public readonly record struct DetailAsRead(string? Text, decimal? Number, bool IsBlank);

/// <summary>
/// The details of entries, each cell read for itself. "`blank is hand`: a blank cell, or no column, counts as that value; an unreadable one never does."
/// "`method is ultrasound` does not fill in for a column that is not there while another heading of the file is unknown."
/// </summary>
public sealed class DetailsAsRead(PlainFarm farm, Vocabulary vocabulary, RecordKeeping? keeping)
{
    private readonly ImmutableArray<string> _columns = farm.ColumnsOfDetails;

    /// <summary>Whether an entry is one that a filter means: all its tests together. Not known where a detail that would tell is blank or cannot be read.</summary>
    public Truth Fits(KindFilter filter, int line) => Kleene.All(filter.Tests.Select(test => Fits(test, filter.Of, line)));

    /// <summary>What more is on record, as evidence shows it; null for nothing.</summary>
    public string? Shown(Kind kind, int line)
    {
        var said = kind.Details.Select(detail => (detail.Name, Cell: Read(detail, kind, line))).Where(one => !one.Cell.IsBlank)
            .Select(one => $"{one.Name} {one.Cell.Text ?? one.Cell.Number?.ToString("0.#########", CultureInfo.InvariantCulture) ?? "not readable"}").ToList();
        return said.Count == 0 ? null : string.Join(", ", said);
    }

    private Truth Fits(DetailTest test, Kind kind, int line)
    {
        var cell = Read(test.Detail, kind, line);
        if (cell.IsBlank && CountsAs(test.Detail, kind) is { } blank)
        {
            cell = new DetailAsRead(blank, null, false);
        }

        return test switch
        {
            // "Where a file has no column, whether it was written down is not known; a blank cell says that it was not."
            DetailRecorded when cell.IsBlank => HasColumn(test.Detail) ? Truth.False : Truth.Unknown,
            DetailRecorded => cell.Text is null && cell.Number is null ? Truth.Unknown : Truth.True,
            DetailIs one when cell.Text is { } text => Kleene.Of(one.Values.Any(value => NameFolding.Fold(value) == NameFolding.Fold(text)) != one.IsNot),
            DetailNumber number when cell.Number is { } value => Kleene.Of(Holds(number.Test, value) != number.IsNot),
            _ => Truth.Unknown,
        };
    }

    private string? CountsAs(EntryDetail detail, Kind kind)
    {
        var said = keeping?.Blanks.FirstOrDefault(blank => blank.Kind.Id == kind.Id && kind.Details[blank.Place] == detail)?.Value;
        var isHeld = HasColumn(detail) || _columns.All(name => vocabulary.Kinds.Any(one => one.Details.Any(known => known.Name == name)));
        return said is not null && isHeld ? said : detail.BlankIs >= 0 ? detail.Values[detail.BlankIs] : null;
    }

    private bool HasColumn(EntryDetail detail) => _columns.Contains(detail.Name);

    private bool IsOfAnotherKind(string column, Kind kind) =>
        kind.Details.All(detail => detail.Name != column) && vocabulary.Kinds.Any(other => other.Details.Any(detail => detail.Name == column));

    private DetailAsRead Read(EntryDetail detail, Kind kind, int line)
    {
        var row = farm.Events[line - PlainFarm.LineOf(0)];
        var text = HasColumn(detail) ? farm.DetailOf(row, _columns.IndexOf(detail.Name)) : "";

        // What stands under the name of another kind's detail may be the one that has no column.
        if (!HasColumn(detail) && _columns.Where((column, place) => farm.DetailOf(row, place).Length > 0 && IsOfAnotherKind(column, kind)).Any())
        {
            return new DetailAsRead(null, null, false);
        }

        return text.Length == 0 ? new DetailAsRead(null, null, true) : detail.Type switch
        {
            FactType.Number => new DetailAsRead(null, CellReading.Number(text), false),
            FactType.OneOf => new DetailAsRead(detail.Values.FirstOrDefault(value => NameFolding.Fold(value) == NameFolding.Fold(text)), null, false),
            // "A question mark names no mob, nor do a dash, `n/a`, `unknown` and `pending`": nor a sire.
            _ => new DetailAsRead(text.Contains('?', StringComparison.Ordinal) || text is "-" or "n/a" or "unknown" or "pending" ? null : text, null, false),
        };
    }

    private static bool Holds(NumberTest test, decimal value)
    {
        var (low, high) = ((decimal)test.Low.Value, (decimal)test.High.Value);
        return test.Comparison switch
        {
            Comparison.AtLeast => value >= low,
            Comparison.AtMost => value <= low,
            Comparison.MoreThan => value > low,
            Comparison.LessThan => value < low,
            Comparison.Exactly => value == low,
            Comparison.Between => value >= low && value <= high,
            _ => throw new ArgumentOutOfRangeException(nameof(test)),
        };
    }
}
