using Byrelaw.Language.Sources;

namespace Byrelaw.Records.Sources;

/// <summary>
/// What <c>record</c> wrote, in <c>events.csv</c> beside a farm's own files: those are never written to. It is read as one more source, which no line of the farm's file names; it
/// can give every kind, and limits how far none of them reaches.
/// </summary>
internal static class RecordedBeside
{
    private static readonly string[] Landed = ["date", "animal", "kind", "value", "unit", "note", "recorded", "sample", SheetRowColumn];

    private const string SheetRowColumn = "sheet row";

    /// <summary>The promises with that source among them; as they are where no such rows stand there, or the farm names the file itself.</summary>
    /// <param name="events">The bytes of <c>events.csv</c>; null where there is none.</param>
    /// <param name="keeping">What the farm says; it names sources.</param>
    /// <param name="vocabulary">The words.</param>
    public static RecordKeeping In(byte[]? events, RecordKeeping keeping, Vocabulary vocabulary)
    {
        if (events is null || keeping.Sources.Any(source => source.File.Replace('\\', '/') == HerdReader.EventsFile) || SourceText.Of(events, null, SourceReader.MostBytes, out _) is not { } text)
        {
            return keeping;
        }

        string[] headings = [.. CellSplitter.Split(text.AsSpan(0, text.AsSpan().IndexOfAny('\r', '\n') is >= 0 and var end ? end : text.Length).ToString()).Select(cell => cell.Value)];
        if (!headings.Any(heading => ColumnMap.Fold(heading) == SheetRowColumn))
        {
            return keeping;
        }

        var details = DetailColumn.Names(vocabulary).ToHashSet(StringComparer.Ordinal);
        return keeping with
        {
            Sources = keeping.Sources.Add(new RecordSource(HerdReader.EventsFile, SourceRows.Events, keeping.Span)
            {
                IsRecorded = true,
                Columns = [.. headings.Select(heading => Column(heading, details, keeping.Span)).OfType<SourceColumn>()],
            }),
        };
    }

    private static SourceColumn? Column(string heading, HashSet<string> details, SourceSpan span) => ColumnMap.Fold(heading) switch
    {
        var landed when Landed.Contains(landed) => new SourceColumn(new LandedTarget(landed), heading, span),
        var detail when details.Contains(detail) => new SourceColumn(new DetailTarget(detail), heading, span),
        _ => null,
    };
}
