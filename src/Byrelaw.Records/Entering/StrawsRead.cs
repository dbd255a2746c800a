using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Entering;

/// <summary>What was read off straws, held to the embryos that they hold: another straw than the embryo's own stops the sheet, for nobody knows which one went in.</summary>
internal static class StrawsRead
{
    /// <summary>On paper the last signs are enough, as long as they tell the sheet's straws apart.</summary>
    private const int FewestSigns = 2;

    public static IEnumerable<Diagnostic> Problems(SourceTable table, Sheet sheet, IEnumerable<RecordedEntry> entries, EmbryoBook book)
    {
        string[] straws = [.. sheet.Rows.Select(row => row.Embryo is { } label ? book.Find(label)?.Straw : null).OfType<string>()];
        foreach (var entry in entries.Where(entry => entry.Kind is EventKind { Marks: Marks.Transfer }))
        {
            var read = entry.Detail("straw read");
            if (read.Length > 0 && book.Find(entry.Detail("embryo")) is { Straw: { } own } embryo && !IsSame(read, own, straws))
            {
                yield return SheetProblems.OtherStraw(table, table.Row(entry.Line), read, embryo.Label, own, book.Embryos.FirstOrDefault(other => other.Straw is { } straw && IsSame(read, straw, straws))?.Label);
            }
        }
    }

    private static bool IsSame(string read, string straw, string[] straws)
    {
        var (signs, whole) = (NameFolding.Fold(read), NameFolding.Fold(straw));
        return signs == whole || (signs.Length >= FewestSigns && whole.EndsWith(signs, StringComparison.Ordinal) && straws.Count(other => NameFolding.Fold(other).EndsWith(signs, StringComparison.Ordinal)) == 1 && straws.Contains(straw));
    }
}
