namespace Byrelaw.Records.Tests.Cells;

public class FactTests
{
    private static Herd Herd(string columns, string cells) => Read.Herd("date,animal,kind\n2026-03-01,1001,heat\n", $"animal,{columns}\n1001,{cells}\n");

    [Theory]
    [InlineData("breed", "jersey")]
    [InlineData("Breed", "Jersey")]
    [InlineData(" BREED ", " JERSEY ")]
    public void A_value_is_kept_as_declared(string column, string cell) => Herd(column, cell).Facts[Words.Breed.Id].Texts.ShouldBe(["Jersey"]);

    [Theory]
    [InlineData("official_id")]
    [InlineData("official identity")]
    [InlineData("Official_Identity")]
    public void A_column_is_found_by_any_of_the_facts_names(string column) =>
        Herd(column, "982000412345678").Facts[Words.Identity.Id].Texts.ShouldBe(["982000412345678"]);

    [Theory]
    [InlineData("560", 560)]
    [InlineData("560 kg", 560)]
    [InlineData("560000 g", 560)]
    public void An_amount_is_in_the_declared_unit_unless_it_says_another(string cell, double value) =>
        Herd("mature_weight", cell).Facts[Words.MatureWeight.Id].Numbers.ShouldBe([value]);

    [Fact]
    public void A_date_is_kept_as_its_day_number_and_may_be_in_the_future() =>
        Herd("dam genomic date", "2031-02-01").Facts[Words.DamDate.Id].Numbers.ShouldBe([Day.Number(Words.Date("2031-02-01"))]);

    [Fact]
    public void A_blank_cell_and_a_column_that_is_not_there_are_missing()
    {
        var herd = Herd("breed,breeding index", ",");

        herd.Facts.ShouldAllBe(fact => fact.States[0] == FactState.Missing);
        herd.Problems.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("F", Sex.Female)]
    [InlineData("f", Sex.Female)]
    [InlineData("M", Sex.Male)]
    [InlineData("", Sex.NotKnown)]
    public void Sex_is_F_M_or_blank(string cell, Sex sex) => Herd("sex", cell).Sexes.ShouldBe([sex]);

    [Theory]
    [InlineData("0", 0)]
    [InlineData("7", 7)]
    [InlineData("", -1)]
    public void Parity_is_a_whole_number_or_blank(string cell, int parity) => Herd("parity", cell).RecordedParity.ShouldBe([parity]);

    [Fact]
    public void Animals_stand_in_the_order_of_their_numbers()
    {
        var herd = Read.Herd("date,animal,kind\n2026-03-01,B7,heat\n", "animal,breed\nB12,Jersey\n101,Friesian\nB7,crossbred\n99,Jersey\n");

        herd.Numbers.ShouldBe(["99", "101", "B7", "B12"]);
        herd.Facts[Words.Breed.Id].Texts.ShouldBe(["Jersey", "Friesian", "crossbred", "Jersey"]);
        herd.AnimalLines.ShouldBe([5, 3, 4, 2]);
        Shown.Entries(herd, "B7", Words.Heat).ShouldBe("2026-03-01 (2)");
    }
}
