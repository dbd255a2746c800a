namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>
/// What no reader can tell: a row that is gone with its line end. Somebody promises that the records are whole, or the latest on record
/// counts; a lost row makes that untrue, and nothing shows it until a calf is born. What it costs is held to an approved table.
/// </summary>
public sealed class LostRowsTests
{
    [Fact]
    public void A_lost_row_of_one_animal_lets_nobody_else_through() => Each.Hold(
        from farm in Gen.OneOf(FarmsOnFile.All.ToArray())
        from row in Gen.Int[1, farm.Records.Events.Length - 1]
        select (Farm: farm, Row: row, Animal: Animal(farm, row)),
        60,
        one => one.Animal.StartsWith("mob:", StringComparison.Ordinal) || one.Animal == "herd"
            || one.Farm.ComeThrough(Without(one.Farm.Records, one.Row)).Where(said => !said.StartsWith($"{one.Animal} of ", StringComparison.Ordinal)).ToList() is not { Count: > 0 } others
            ? null
            : string.Join("; ", others),
        one => $"{one.Farm.Name} without line {one.Row + 1}: {one.Farm.Records.Events[one.Row]}");

    [Fact]
    public void What_each_lost_row_of_the_small_farms_does()
    {
        var lost = new SortedDictionary<string, (int Rows, int Through)>(StringComparer.Ordinal);
        foreach (var farm in FarmsOnFile.Examples.Where(farm => farm.Records.Events.Length < 200))
        {
            for (var row = 1; row < farm.Records.Events.Length; row++)
            {
                var kind = RecordFiles.Cells(farm.Records.Events[row])[2];
                var (rows, through) = lost.GetValueOrDefault(kind);
                lost[kind] = (rows + 1, through + (farm.ComeThrough(Without(farm.Records, row)).IsEmpty ? 0 : 1));
            }
        }

        Snapshot.Verify(string.Concat(lost.Select(one => $"{one.Key}: {one.Value.Through} of {one.Value.Rows} let somebody through\n")));
    }

    private static string Animal(FarmOnFile farm, int row) => RecordFiles.Cells(farm.Records.Events[row])[1];

    private static RecordFiles Without(RecordFiles files, int row) => files with { Events = files.Events.RemoveAt(row) };
}
