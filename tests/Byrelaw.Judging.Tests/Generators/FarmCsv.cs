using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Writes a plain farm down as the two files of a folder of records.</summary>
public static class FarmCsv
{
    public static byte[] Animals(PlainFarm farm) => Write(
        ["animal", "born", "sex", "mob", "parity", "parity on", .. farm.FactNames],
        farm.Animals.Select(row => new[] { row.Number, row.Born, row.Sex, row.Mob, row.Parity, row.ParityOn }.Concat(row.Facts)));

    /// <summary>The columns of details that the farm names; else that of the method, where any row says it.</summary>
    public static byte[] Events(PlainFarm farm)
    {
        ImmutableArray<string> details = farm.ColumnsOfDetails;
        string[] sheetRow = farm.Events.Any(row => row.SheetRow.Length > 0) ? ["sheet row"] : [];
        return Write(
            ["date", "animal", "kind", "value", "unit", "recorded", .. details, .. sheetRow],
            farm.Events.Select(row => new[] { row.Date, row.Animal, row.Kind, row.Value, row.Unit, row.Recorded }
                .Concat(details.Select((_, place) => farm.DetailOf(row, place))).Concat(sheetRow.Select(_ => row.SheetRow))));
    }

    private static byte[] Write(IEnumerable<string> heading, IEnumerable<IEnumerable<string>> rows) =>
        Encoding.UTF8.GetBytes(string.Concat(rows.Prepend(heading).Select(row => string.Join(',', row.Select(Cell)) + "\n")));

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",\"\n") >= 0 ? $"\"{text.Replace("\"", "\"\"")}\"" : text;
}
