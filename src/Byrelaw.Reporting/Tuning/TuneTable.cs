namespace Byrelaw.Reporting.Tuning;

/// <summary>The table of values, for a terminal and for a page.</summary>
internal static class TuneTable
{
    /// <summary>On a terminal, the value in force marked.</summary>
    public static void Write(StringBuilder text, NumberTuning tuning, Rulebook rulebook, Ink ink)
    {
        string[] heads = [NumberWords.Unit(tuning.Number), .. AnswerWords.All.Select(AnswerWords.Both)];
        var rows = TuneRows.Of(tuning, rulebook).Select(row => (Row: row, Cells: Cells(row))).ToList();
        var widths = heads.Select((head, column) => rows.Select(row => row.Cells[column].Length).Append(head.Length).Max()).ToList();
        text.Append("      ").Append(Joined(heads, widths)).Append('\n');
        foreach (var (row, cells) in rows)
        {
            if (row.SkipsBefore)
            {
                text.Append("      ").Append("…".PadLeft(widths[0])).Append('\n');
            }

            var line = $"{(row.IsNow ? ">" : " ")} {Joined(cells, widths)}{(row.Marks.IsEmpty ? "" : $"   {PlainText.Clean(Marks(row))}")}";
            text.Append("    ").Append(row.IsNow ? ink.Bold(line) : line).Append('\n');
        }
    }

    /// <summary>On a page.</summary>
    public static MarkdownTable Of(NumberTuning tuning, Rulebook rulebook)
    {
        var table = new MarkdownTable(
            $"How many have which answer, by {Phrases.Small(NumberWords.Title(tuning.Number))}",
            [NumberWords.Unit(tuning.Number), .. AnswerWords.All.Select(AnswerWords.Both), "whose value"]);
        foreach (var row in TuneRows.Of(tuning, rulebook))
        {
            if (row.SkipsBefore)
            {
                table.Add(["…", .. AnswerWords.All.Select(_ => ""), ""]);
            }

            var cells = Cells(row);
            table.Add([row.IsNow ? MarkdownText.Bold(cells[0]) : MarkdownText.Of(cells[0]), .. cells.Skip(1), MarkdownText.Of(Marks(row))]);
        }

        return table;
    }

    private static string[] Cells(TuneRow row) =>
        [NumberWords.Bare(row.Value), .. AnswerWords.All.Select(answer => row.Step.Count(answer).ToString(CultureInfo.InvariantCulture))];

    private static string Marks(TuneRow row) => string.Join(", ", row.Marks);

    private static string Joined(string[] cells, List<int> widths) => string.Join("  ", cells.Select((cell, column) => cell.PadLeft(widths[column])));
}
