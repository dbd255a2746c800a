namespace Byrelaw.Records.Suggesting;

/// <summary>What the cells of a column look like.</summary>
internal sealed class ColumnProfile
{
    /// <summary>The orders in which dates may stand, the landed one first.</summary>
    public static readonly ImmutableArray<DateOrder> Orders = [DateOrder.YearFirst, DateOrder.DayFirst, DateOrder.MonthFirst];

    private readonly Dictionary<string, int> _counts = new(StringComparer.Ordinal);
    private readonly Dictionary<DateOrder, List<string>> _unread = [];

    /// <summary>Reads a column.</summary>
    /// <param name="table">Whose.</param>
    /// <param name="index">Which.</param>
    /// <param name="today">The day after which no short year lies.</param>
    /// <param name="name">What the lowest heading row says, where headings stand in several; null for the heading.</param>
    public ColumnProfile(SourceTable table, int index, LocalDate today, string? name = null)
    {
        (Heading, Index, Name) = (table.Headings[index], index, name is null or "" ? table.Headings[index] : name);
        foreach (var row in table.Rows)
        {
            if (row.Flaw is null && row[index] is { Length: > 0 } cell and not "-")
            {
                Filled++;
                _counts[cell] = _counts.GetValueOrDefault(cell) + 1;
            }
        }

        HasShortYears = _counts.Keys.Any(IsShort) && _counts.Keys.All(cell => IsShort(cell) || !HasDateSigns(cell));
        foreach (var order in Orders)
        {
            var dates = new CellDates(order, HasShortYears, today);

            // A sheet's own dates are dates in whatever order texts stand.
            _unread[order] = [.. _counts.Keys.Where(cell => (cell.All(char.IsAsciiDigit) ? dates.Landed(cell) : dates.LandedSpan(cell)) is null && !(table.IsSheet && CellDates.IsLanded(cell)))];
        }
    }

    /// <summary>The heading as it stands there.</summary>
    public string Heading { get; }

    /// <summary>What the column is called, by the lowest of its headings.</summary>
    public string Name { get; }

    /// <summary>Its place, from 0.</summary>
    public int Index { get; }

    /// <summary>How many cells are not blank; a lone dash is blank.</summary>
    public int Filled { get; private set; }

    /// <summary>Whether years are written with two digits.</summary>
    public bool HasShortYears { get; }

    /// <summary>Its texts and how often each stands there.</summary>
    public IReadOnlyDictionary<string, int> Texts => _counts;

    /// <summary>Its texts without blanks: a tag is written in groups of digits here, and in one piece there.</summary>
    public IReadOnlySet<string> Plain => field ??= _counts.Keys.Select(text => string.Concat(text.Where(sign => !char.IsWhiteSpace(sign)))).ToHashSet(StringComparer.Ordinal);

    /// <summary>Whether no text stands there twice, but for a slip: one of twenty, or one of eight and more.</summary>
    public bool AreDifferent => Filled > 1 && Filled - _counts.Count <= Math.Max(Filled < 8 ? 0 : 1, Filled / 20);

    /// <summary>Whether no text stands there twice at all.</summary>
    public bool AreAllDifferent => Filled > 1 && _counts.Count == Filled;

    /// <summary>Whether it holds dates: nine of ten cells are some, in one order or another.</summary>
    public bool HoldsDates => Filled > 0 && Orders.Any(order => 10 * (_counts.Count - _unread[order].Count) >= 9 * _counts.Count);

    /// <summary>Whether more than half of its texts are dates.</summary>
    public bool HoldsMostlyDates => Filled > 0 && Orders.Any(order => 2 * _unread[order].Count < _counts.Count);

    /// <summary>Texts that are no dates in an order; a month of a year is one.</summary>
    public IReadOnlyList<string> NoDates(DateOrder order) => _unread[order];

    /// <summary>Whether every cell is a number.</summary>
    public bool HoldsNumbers => Filled > 0 && _counts.Keys.All(IsNumber);

    /// <summary>Whether every cell is a whole number from 0 to 25, as a parity is.</summary>
    public bool HoldsParities => Filled > 0 && _counts.Keys.All(cell => int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= 25);

    /// <summary>Whether every cell satisfies something.</summary>
    public bool All(Func<string, bool> holds) => Filled > 0 && _counts.Keys.All(holds);

    /// <summary>Whether a text is a number, with a comma or a point before the tenths, or a limit such as <c>&lt;3</c>.</summary>
    public static bool IsNumber(string cell)
    {
        var digits = cell.TrimStart('<', '>', '-', ' ');
        return digits.Length > 0 && char.IsAsciiDigit(digits[0]) && digits.All(sign => char.IsAsciiDigit(sign) || sign is ',' or '.') && digits.Count(sign => sign is ',' or '.') <= 1;
    }

    /// <summary>Whether a text is a date, in whatever order.</summary>
    public static bool IsDate(string cell) => AnyDates.Any(dates => dates.LandedSpan(cell) is not null);

    private static readonly CellDates[] AnyDates = [.. Orders.Select(order => new CellDates(order, hasShortYears: true, null))];

    private static bool HasDateSigns(string cell) => cell.Split(['/', '.', '-'], 4).Length == 3;

    private static bool IsShort(string cell) => cell.Split(['/', '.', '-', ' '], 4) is [{ Length: <= 2 }, { Length: <= 2 }, { Length: 2 }] or [{ Length: <= 2 }, { Length: 3 }, { Length: 2 }] && cell.Any(char.IsAsciiDigit);
}
