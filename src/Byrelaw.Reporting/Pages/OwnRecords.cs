using Byrelaw.Language.Rulebooks.RecordSources;

namespace Byrelaw.Reporting.Pages;

/// <summary>What a farm says of its records: how far they reach, what they promise, what blank means, what is left out, and where they stand.</summary>
internal static class OwnRecords
{
    /// <summary>An item each.</summary>
    public static IEnumerable<Wording> Of(Rulebook rulebook)
    {
        if (rulebook.Records is not { } records)
        {
            return Expected(rulebook);
        }

        return
        [
            .. records.RecordsTo is { } word ? [LocalPractice.Said("Records reach", Dates.Long(word), "“--records-to”, by the word of whoever drew this up", null, null)]
            : records.UpTo is { } day ? [LocalPractice.Said("Records reach", Dates.Long(day), $"“up to {LocalDatePattern.Iso.Format(day)}” ({ChangeHistory.Place(records.Span)})", null, null)] : Array.Empty<Wording>(),
            .. records.Complete.Select(one => LocalPractice.Said(one.IsNone ? "None here" : "Promised", Names(one), AsWritten.Of(one.Span), one.Because, one.Agreement)),
            .. records.Blanks.GroupBy(blank => blank.Span).Select(blank => LocalPractice.Said(
                "Blank means", $"{blank.First().Value}, for the {blank.First().Kind.Details[blank.First().Place].Name} of {Phrases.And([.. blank.Select(one => one.Kind.Name).Distinct()])}", AsWritten.Of(blank.Key), null, null)),
            .. records.LeaveOut.Select(word => LocalPractice.Said(
                "Left out", word.IsNot is { } kind ? $"{word.Word}, which is not {kind.Name}" : word.Word, $"no rule sees it ({ChangeHistory.Place(word.Span)})", null, null)),
            .. records.Compared.Select(one => LocalPractice.Said(
                one.AreOne ? "One animal" : "Not one animal", Phrases.And(one.Numbers), AsWritten.Of(one.Span), one.Because, one.Agreement)),
            .. records.Sources.SelectMany(Read),
            .. Expected(rulebook),
        ];
    }

    /// <summary>A file of the farm's own, what of it is left out, and as what each of its texts is read.</summary>
    private static IEnumerable<Wording> Read(RecordSource source) =>
    [
        LocalPractice.Said("Read from", source.File, $"{Columns(source)} ({ChangeHistory.Place(source.Span)})", null, null),
        .. source.RowsLeftOut.Select(row => LocalPractice.Said($"Left out of {source.File}", "rows", $"where “{row.Heading}” is {(row.Cell.Length == 0 ? "blank" : $"“{row.Cell}”")}", null, null)),
        .. source.ColumnsLeftOut.Length == 0 ? Array.Empty<Wording>() : [LocalPractice.Said($"Left out of {source.File}", source.ColumnsLeftOut.Length == 1 ? "column" : "columns", Phrases.And([.. source.ColumnsLeftOut.Select(heading => $"“{heading}”")]), null, null)],
        .. source.Columns.SelectMany(column => column.Cells).Where(cell => cell.Span != source.Span).Select(cell => LocalPractice.Said($"Text of {source.File}", cell.Cell.Length == 0 ? "blank" : cell.Cell, AsWritten.LineOf(cell.Span), null, null)),
    ];

    private static IEnumerable<Wording> Expected(Rulebook rulebook) =>
    [
        .. rulebook.Expectations.Where(expectation => !expectation.IsAdded && ReferenceEquals(expectation.Span.File, rulebook.Files.FirstOrDefault())).Select(expectation => LocalPractice.Said(
            "Own expectation", $"{expectation.Name}: {ExpectationText.Expected(expectation) ?? "a line that cannot be read"}", $"one expectation more ({ChangeHistory.Place(expectation.Span)})", expectation.Because, expectation.Agreement)),
        .. rulebook.Expectations.Where(expectation => expectation.IsAdded).Select(expectation => LocalPractice.Said(
            "Expected besides", $"{expectation.Name}: {ExpectationText.Expected(expectation) ?? "a line that cannot be read"}", $"what was expected is tried too ({ChangeHistory.Place(expectation.Span)})", expectation.Because, expectation.Agreement)),
        .. rulebook.ExpectationWaivers.Select(Waived),
    ];

    private static string Names(Completeness promise) => Phrases.And([.. promise.Kinds.Select(kind => kind.Name)]);

    private static string Columns(RecordSource source)
    {
        var left = source.ColumnsLeftOut.Length + source.RowsLeftOut.Length;
        return $"{Numbers.Count(source.Columns.Length, "column", "columns")} read" + (left == 0 ? "" : $", {Numbers.Count(left, "line", "lines")} that leave something out");
    }

    private static Wording Waived(ExpectationWaiver waiver) => LocalPractice.Said(
        "Not held to it", $"{waiver.Animal}, to “{waiver.Expectation}”", $"{(waiver.Until is { } until ? $"until {Dates.Long(until)}" : "until it is taken out")} ({ChangeHistory.Place(waiver.Span)})", waiver.Because, waiver.Agreement);
}
