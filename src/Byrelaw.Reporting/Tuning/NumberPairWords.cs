namespace Byrelaw.Reporting.Tuning;

/// <summary>Two numbers at once, in words.</summary>
internal static class NumberPairWords
{
    /// <summary>The heading.</summary>
    public static string Title(PairTuning pair) => $"{Name(pair.First, pair)} (down) and {Phrases.Small(Name(pair.Second, pair))} (across): how many may be used";

    /// <summary>The cells as text, a heading row and column among them; values in force stand in brackets.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Table(PairTuning pair) =>
    [
        ["", .. pair.SecondValues.Select(value => Value(value, pair.Second))],
        .. pair.FirstValues.Select((value, row) => (IReadOnlyList<string>)
            [Value(value, pair.First), .. pair.Cells[row].Select(cell => cell.Usable.ToString(CultureInfo.InvariantCulture))]),
    ];

    /// <summary>What the table says, and what it leaves out.</summary>
    public static string Below(PairTuning pair) =>
        $"Ready and On course together; each cell is judged with both values. In brackets: the values in force. {Values(pair)}{Together(pair)}.";

    private static string Values(PairTuning pair) => pair.First.Rule.Name == pair.Second.Rule.Name
        ? "Rows and columns are the nearest values at which one number lets others in or leaves others out, at some value of the other"
        : "Rows and columns are the nearest values at which a number would let others in or leave others out if the other rule were not there";

    /// <summary>Whether the two do more together than one after the other: the cell that gains most against the sum of its two moves.</summary>
    private static string Together(PairTuning pair)
    {
        var (nowRow, nowColumn) = (pair.FirstValues.IndexOf(Now(pair.First)), pair.SecondValues.IndexOf(Now(pair.Second)));
        var now = pair.Cells[nowRow][nowColumn].Usable;
        var best = (Extra: 0, Row: 0, Column: 0);
        for (var row = 0; row < pair.FirstValues.Length; row++)
        {
            for (var column = 0; column < pair.SecondValues.Length; column++)
            {
                var extra = pair.Cells[row][column].Usable - now - (pair.Cells[row][nowColumn].Usable - now) - (pair.Cells[nowRow][column].Usable - now);
                if (extra > best.Extra && pair.Cells[row][column].Usable > now)
                {
                    best = (extra, row, column);
                }
            }
        }

        return best.Extra == 0 ? "" : $". {NumberWords.Value(pair.First, pair.FirstValues[best.Row])} and {NumberWords.Value(pair.Second, pair.SecondValues[best.Column])} together let in "
            + $"{best.Extra} more than the two moves one by one: for {(best.Extra == 1 ? "that one" : "those")}, one rule alone was never what stood in the way";
    }

    private static string Name(Workshop.Tuning.RuleNumber number, PairTuning pair) =>
        pair.First.Rule.Name == pair.Second.Rule.Name ? NumberWords.Title(number) : $"“{number.Rule.Name}”, {Phrases.Small(NumberWords.Title(number))}";

    private static decimal Now(Workshop.Tuning.RuleNumber number) => Math.Round((decimal)number.Number.Value, 6);

    private static string Value(decimal value, Workshop.Tuning.RuleNumber number) => value == Now(number) ? $"[{NumberWords.Bare(value)}]" : NumberWords.Bare(value);
}
