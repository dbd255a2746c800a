namespace Byrelaw.Reporting.Tuning;

/// <summary>The table of values, for a terminal and for a page.</summary>
internal static class TuneTable
{
    /// <summary>On a terminal, the value in force marked.</summary>
    public static Table OnTerminal(NumberTuning tuning, Rulebook rulebook)
    {
        var table = new Table(
            "How many have which answer",
            [new Column("", Least: 1), new Column(NumberWords.Unit(tuning.Number), IsNumber: true, Before: 1), .. AnswerWords.All.Select(answer => new Column(AnswerWords.Both(answer), IsNumber: true)), new Column("", Before: 3)]);
        foreach (var row in TuneRows.Of(tuning, rulebook))
        {
            if (row.SkipsBefore)
            {
                table.Add([" ", "…", .. AnswerWords.All.Select(_ => ""), ""]);
            }

            Wording[] cells = [row.IsNow ? ">" : " ", .. Cells(row), Marks(row)];
            table.Add(row.IsNow ? [.. cells.Select(cell => Wording.Bold(cell.ToString()))] : cells);
        }

        return table;
    }

    /// <summary>On a page.</summary>
    public static Table Of(NumberTuning tuning, Rulebook rulebook)
    {
        var table = new Table(
            $"How many have which answer, by {Phrases.Small(NumberWords.Title(tuning.Number))}",
            [NumberWords.Unit(tuning.Number), .. AnswerWords.All.Select(AnswerWords.Both), "whose value"]);
        foreach (var row in TuneRows.Of(tuning, rulebook))
        {
            if (row.SkipsBefore)
            {
                table.Add(["…", .. AnswerWords.All.Select(_ => ""), ""]);
            }

            var cells = Cells(row);
            table.Add([row.IsNow ? Wording.Bold(cells[0]) : cells[0], .. cells.Skip(1), Marks(row)]);
        }

        return table;
    }

    private static string[] Cells(TuneRow row) =>
        [NumberWords.Bare(row.Value), .. AnswerWords.All.Select(answer => row.Step.Count(answer).ToString(CultureInfo.InvariantCulture))];

    private static string Marks(TuneRow row) => string.Join(", ", row.Marks);
}
