namespace Byrelaw.Reporting.Tuning;

/// <summary>A rule's numbers tuned, for a terminal.</summary>
public static class TuneText
{
    /// <summary>All of it, with line ends LF.</summary>
    public static string Of(RuleTuning tuned, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(tuned);
        ArgumentNullException.ThrowIfNull(ink);
        var text = new DocumentBuilder().Sentence($"{Wording.Bold(tuned.Rule.Name)} · {TuneHead.Standing(tuned)}").In(1).Sentence(TuneHead.Asks(tuned));
        foreach (var number in tuned.Numbers)
        {
            Number(text, tuned, number);
        }

        foreach (var pair in tuned.Pairs)
        {
            Pair(text, pair);
        }

        return text.Gap().Sentence(TuneCautions.Always).OnTerminal(ink);
    }

    private static void Number(DocumentBuilder text, RuleTuning tuned, TunedNumber number)
    {
        var tuning = number.Tuning;
        text.Gap().Heading(2, $"{NumberWords.Title(number.Number)}: {NumberWords.Value(number.Number, tuning.Current)} now")
            .Sentence(TuneHead.Moves(tuned, number.Number)).In(2).Table(TuneTable.OnTerminal(tuning, tuned.Rulebook)).In(1);
        foreach (var sentence in MoveWords.Of(tuning).Concat(GroupWords.All(number, tuned)))
        {
            text.Sentence(sentence);
        }

        foreach (var (name, version) in LayerWords.Of(new RuleTuningSide(number.Number, tuned.Rulebook)))
        {
            text.Sentence(LayerWords.Sentence(name, version, number.Number));
        }

        foreach (var caution in TuneCautions.Of(tuning, tuned.Rulebook))
        {
            text.Sentence($"Beware: {caution}");
        }

        if (TuneHead.Example(tuning) is { } value)
        {
            var lines = LinesToWrite.For(tuned.Rulebook, number.Number, value);
            text.Sentence(TuneHead.HowToWrite(tuned, number.Number, value, lines)).Gap().In(2).FileLines(lines.Lines).In(1);
        }
    }

    private static void Pair(DocumentBuilder text, PairTuning pair)
    {
        var cells = NumberPairWords.Table(pair);
        var table = new Table(NumberPairWords.Title(pair), [.. cells[0].Select(heading => new Column(heading, IsNumber: true))]);
        foreach (var row in cells.Skip(1))
        {
            table.Add([.. row]);
        }

        text.Gap().Heading(2, NumberPairWords.Title(pair)).In(2).Table(table).In(1).Sentence(NumberPairWords.Below(pair));
    }
}
