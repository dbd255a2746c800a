namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>"Doubt never lets an animal through", over whole farms as they lie on disk: whatever befalls the files, nobody becomes Ready or On course who was not.</summary>
/// <remarks>
/// The example farms here; other herds by <c>BYRELAW_FARMS</c>, longer by <c>BYRELAW_TIMES</c> (<c>DEVELOPERS.md</c> has the command for 100,000 trials).
/// </remarks>
public sealed class GarbledFilesTests
{
    private const long Count = 25;

    [Fact]
    public void A_smudged_cell_of_an_event_lets_nobody_through() => Check(FileGarblings.SmudgeACellOfAnEvent);

    [Fact]
    public void A_blank_cell_of_an_event_lets_nobody_through() => Check(FileGarblings.BlankACellOfAnEvent);

    [Fact]
    public void A_smudged_cell_of_an_animal_lets_nobody_through() => Check(FileGarblings.SmudgeACellOfAnAnimal);

    [Fact]
    public void Events_cut_within_a_row_let_nobody_through() => Check(FileGarblings.CutTheEvents, IsToldOfTheEnd);

    [Fact]
    public void Animals_cut_within_a_row_let_nobody_through() => Check(FileGarblings.CutTheAnimals, IsToldOfTheEnd);

    [Fact]
    public void Two_rows_glued_let_nobody_through() => Check(FileGarblings.GlueTwoEvents);

    [Fact]
    public void A_year_to_come_lets_nobody_through() => Check(FileGarblings.TypeAYearToCome);

    [Fact]
    public void An_import_that_ran_twice_lets_nobody_through() => Check(FileGarblings.ImportTwice);

    [Fact]
    public void A_decimal_comma_lets_nobody_through() => Check(FileGarblings.TypeADecimalComma);

    [Fact]
    public void An_animal_under_two_numbers_lets_nobody_through() => Check(FileGarblings.SplitAnAnimal);

    [Fact]
    public void A_number_that_cannot_be_read_lets_nobody_else_through() => Check(FileGarblings.LoseANumber);

    [Fact]
    public void A_renamed_column_lets_nobody_through() => Check(FileGarblings.RenameAColumn);

    [Fact]
    public void A_kind_said_otherwise_lets_nobody_through() => Check(FileGarblings.SayAKindOtherwise);

    [Fact]
    public void Quotation_marks_let_nobody_through() => Check(FileGarblings.TypeQuotationMarks);

    [Fact]
    public void Several_accidents_let_nobody_through() => Check(FileGarblings.Several);

    /// <summary>A last row with all its cells and no line end is a row (RFC 4180, 2.2), and may be a cut one: page one says so.</summary>
    private static bool IsToldOfTheEnd(Doubted doubt) => doubt is RowsInDoubt { Why: RowDoubt.LastCellCut };

    private static void Check(Func<RecordFiles, Gen<RecordFiles?>> garble, Func<Doubted, bool>? named = null) => Each.Hold(
        from farm in Gen.OneOf(FarmsOnFile.All.ToArray())
        from less in garble(farm.Records)
        select (Farm: farm, Less: less),
        Count,
        one => one.Less is { } less && one.Farm.ComeThrough(less, named) is { IsEmpty: false } through ? string.Join("; ", through) : null,
        one => $"{one.Farm.Name}\n{Changed(one.Farm.Records.Animals, one.Less!.Animals)}{Changed(one.Farm.Records.Events, one.Less.Events)}");

    /// <summary>The first lines in which two files differ.</summary>
    private static string Changed(ImmutableArray<string> before, ImmutableArray<string> after)
    {
        var same = Enumerable.Range(0, Math.Min(before.Length, after.Length)).FirstOrDefault(i => before[i] != after[i], Math.Min(before.Length, after.Length));
        return same == before.Length && same == after.Length ? "" : $"line {same + 1}:\n  {before.ElementAtOrDefault(same)}  {after.ElementAtOrDefault(same)}";
    }
}
