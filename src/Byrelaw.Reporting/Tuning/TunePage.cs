namespace Byrelaw.Reporting.Tuning;

/// <summary>A rule's numbers tuned, on one page.</summary>
public static class TunePage
{
    /// <summary>The page, named <c>tune</c>.</summary>
    public static Page Of(RuleTuning tuned)
    {
        ArgumentNullException.ThrowIfNull(tuned);
        var title = $"Tuning: {tuned.Rule.Name}";
        return new Page("tune", title, TuneHead.Of(tuned),
        [
            new DocumentBuilder().Heading(1, title).Sentence(TuneHead.Asks(tuned)).Sentence(TuneCautions.Always).As("top"),
            .. tuned.Numbers.SelectMany(number => Number(tuned, number)),
            .. tuned.Pairs.Select(Pair),
            new DocumentBuilder().Heading(2, "Fingerprints").Bullets(
            [
                $"Tuned with: {JudgedWith.NameAndVersion}",
                $"Rulebook: {Fingerprint.Of(tuned.Rulebook)}",
                $"Records: {tuned.Herd.Fingerprint}",
                $"Known day: {ReachWords.Day(tuned.Herd)}",
            ]).As("fingerprints"),
            CautionsPart.Of(),
        ]);
    }

    private static IEnumerable<Part> Number(RuleTuning tuned, TunedNumber number)
    {
        var tuning = number.Tuning;
        yield return new DocumentBuilder().Heading(2, $"{NumberWords.Title(number.Number)}: {NumberWords.Value(number.Number, tuning.Current)} now")
            .Sentence(TuneHead.Moves(tuned, number.Number))
            .Table(TuneTable.Of(tuning, tuned.Rulebook))
            .Sentence(TuneHead.OfTheTable)
            .Picture(TuningPicture.Of(tuning, tuned.Rulebook)).As("counts");
        var said = new DocumentBuilder().Bullets(MoveWords.Of(tuning).Concat(GroupWords.All(number, tuned)));
        foreach (var caution in TuneCautions.Of(tuning, tuned.Rulebook))
        {
            said.Led("Beware:", caution);
        }

        yield return said.As("moves");
        var layers = LayerWords.Of(new RuleTuningSide(number.Number, tuned.Rulebook));
        if (layers.Count > 0)
        {
            yield return new DocumentBuilder().Heading(3, "Who uses which value").Bullets(layers.Select(layer => LayerWords.Sentence(layer.Name, layer.Version, number.Number))).As("layers");
        }

        if (TuneHead.Example(tuning) is { } value)
        {
            var lines = LinesToWrite.For(tuned.Rulebook, number.Number, value);
            yield return new DocumentBuilder().Heading(3, "The lines to write").Sentence(TuneHead.HowToWrite(tuned, number.Number, value, lines))
                .FileLines(lines.Lines).As("lines");
        }

        yield return new DocumentBuilder().Heading(3, "Each animal that a value changes").Table(AnswersByValue.Of(tuning)).As("animals");
    }

    private static Part Pair(PairTuning pair)
    {
        var cells = NumberPairWords.Table(pair);
        var table = new Table(NumberPairWords.Title(pair), [.. cells[0].Select((cell, column) => column == 0 ? "value" : cell)]);
        foreach (var row in cells.Skip(1))
        {
            table.Add([.. row.Select((cell, column) => column == 0 ? Wording.Bold(cell) : cell)]);
        }

        return new DocumentBuilder().Heading(2, "Two at once").Table(table).Sentence(NumberPairWords.Below(pair)).As("pair");
    }
}
