namespace Byrelaw.Records.Doubts;

/// <summary>Turns doubts into warnings that show their lines.</summary>
internal static class DoubtTexts
{
    private const int BlockSize = 1 << 20;

    /// <summary>One warning for each line and code: where a row of a mob is doubtful for several animals, the first is named.</summary>
    public static IEnumerable<Diagnostic> Of(IReadOnlyList<Doubt> doubts, RecordFile file, EventColumns? columns)
    {
        var texts = LineFinder.Find(file, doubts.Select(doubt => doubt.Line), BlockSize);
        foreach (var group in doubts.GroupBy(doubt => (doubt.Line, doubt.Code)).OrderBy(group => group.Key))
        {
            var doubt = group.First();
            var others = group.Count() - 1;
            var found = others == 0 ? doubt.Found : $"{doubt.Found}, and so for {Entries.Count(others, "other", "others")}";
            yield return texts[doubt.Line].Problem(Cell(doubt.Cell, columns), doubt.Code, Severity.Warning, found, doubt.Expected, doubt.Help);
        }
    }

    private static int Cell(DoubtfulCell cell, EventColumns? columns) => columns is null ? 0 : cell switch
    {
        DoubtfulCell.Date => columns.Date,
        DoubtfulCell.Animal => columns.Animal,
        DoubtfulCell.Kind => columns.Kind,
        DoubtfulCell.Recorded => columns.Recorded,
        _ => Math.Max(columns.Value, 0),
    };
}
