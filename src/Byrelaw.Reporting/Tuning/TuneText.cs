namespace Byrelaw.Reporting.Tuning;

/// <summary>A rule's numbers tuned, for a terminal.</summary>
public static class TuneText
{
    /// <summary>All of it, with line ends LF.</summary>
    public static string Of(RuleTuning tuned, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(tuned);
        ArgumentNullException.ThrowIfNull(ink);
        var text = new StringBuilder();
        text.Append(ink.Bold(PlainText.Clean(tuned.Rule.Name))).Append(" · ").Append(PlainText.Clean(TuneHead.Standing(tuned))).Append('\n');
        Line(text, TuneHead.Asks(tuned));
        foreach (var number in tuned.Numbers)
        {
            Number(text, tuned, number, ink);
        }

        foreach (var pair in tuned.Pairs)
        {
            Pair(text, pair, ink);
        }

        text.Append('\n');
        Line(text, TuneCautions.Always);
        return text.ToString();
    }

    private static void Number(StringBuilder text, RuleTuning tuned, TunedNumber number, Ink ink)
    {
        var tuning = number.Tuning;
        text.Append("\n  ").Append(ink.Bold(PlainText.Clean($"{NumberWords.Title(number.Number)}: {NumberWords.Value(number.Number, tuning.Current)} now"))).Append('\n');
        Line(text, TuneHead.Moves(tuned, number.Number));
        TuneTable.Write(text, tuning, tuned.Rulebook, ink);
        foreach (var sentence in MoveWords.Of(tuning).Concat(GroupWords.All(number, tuned)))
        {
            Line(text, sentence);
        }

        foreach (var (name, version) in LayerWords.Of(new RuleTuningSide(number.Number, tuned.Rulebook)))
        {
            Line(text, LayerWords.Sentence(name, version, number.Number));
        }

        foreach (var caution in TuneCautions.Of(tuning, tuned.Rulebook))
        {
            Line(text, $"Beware: {caution}");
        }

        if (TuneHead.Example(tuning) is { } value)
        {
            var lines = LinesToWrite.For(tuned.Rulebook, number.Number, value);
            Line(text, TuneHead.HowToWrite(tuned, number.Number, value, lines));
            text.Append('\n');
            foreach (var line in lines.Lines)
            {
                text.Append($"    {line}".TrimEnd()).Append('\n');
            }
        }
    }

    private static void Pair(StringBuilder text, PairTuning pair, Ink ink)
    {
        text.Append("\n  ").Append(ink.Bold(PlainText.Clean(PairWords.Title(pair)))).Append('\n');
        var cells = PairWords.Table(pair);
        var widths = Enumerable.Range(0, cells[0].Count).Select(column => cells.Max(row => row[column].Length)).ToList();
        foreach (var row in cells)
        {
            text.Append("    ").AppendJoin("  ", row.Select((cell, column) => cell.PadLeft(widths[column]))).Append('\n');
        }

        Line(text, PairWords.Below(pair));
    }

    private static void Line(StringBuilder text, string words)
    {
        if (words.Length > 0)
        {
            text.Append($"  {PlainText.Clean(words)}\n");
        }
    }
}
