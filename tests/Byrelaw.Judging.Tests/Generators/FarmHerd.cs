using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Records.Ledger;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>A farm as the program reads it, with the sheets that were written for it.</summary>
internal static class FarmHerd
{
    public static Herd Of(JudgingCase one) => one.Farm.Sheets.IsEmpty
        ? HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn)
        : HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records! with { Today = one.Farm.Today }, one.KnownOn, Ledger(one.Farm.Sheets));

    private static SheetLedger Ledger(IEnumerable<PlainSheet> sheets) => sheets.Aggregate(SheetLedger.Of([]), (ledger, sheet) => ledger.With(new Sheet(
        sheet.Number, sheet.For, sheet.Written, null, "H", sheet.Replaces.Length == 0 ? [] : [sheet.Replaces], [.. sheet.Rows.Select((row, place) => new SheetRow(place + 1, row.Animal, null, [new SheetEntry(row.Kind)]))])));
}
