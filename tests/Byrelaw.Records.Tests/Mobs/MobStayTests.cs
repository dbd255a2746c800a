namespace Byrelaw.Records.Tests.Mobs;

public class MobStayTests
{
    private const string WithMobs = """
        animal,born,sex,mob
        1001,2019-08-12,F,North
        1002,2020-07-30,F,South
        1003,2021-08,F,

        """;

    private static Herds.Herd Herd(params string[] rows) => Read.Herd(Read.Heading(rows), WithMobs);

    [Fact]
    public void The_column_holds_always_for_an_animal_without_a_move() =>
        Shown.Stays(Herd(), "1001").ShouldBe("North from start (0)");

    [Fact]
    public void The_column_does_not_count_for_an_animal_with_a_move() =>
        Shown.Stays(Herd("2026-01-01,1001,mob,West,"), "1001").ShouldBe("West from 2026-01-01 (2)");

    [Fact]
    public void An_animal_without_either_is_in_no_known_mob()
    {
        var herd = Herd();

        Shown.Stays(herd, "1003").ShouldBe("");
        herd.Mobs.At(herd.Find("1003"), Herds.Day.Number(Words.Date("2026-01-01"))).ShouldBe(Herds.MobStays.NotKnown);
    }

    [Theory]
    [InlineData("North / South", false)]
    [InlineData("south+north", false)]
    [InlineData("North / West", true)] // No mob is called West: it may be one mob's name.
    [InlineData("North", true)]
    public void Two_mobs_in_one_cell_leave_her_mob_not_known(string cell, bool isKnown)
    {
        var herd = Read.Herd(Read.Heading([]), WithMobs + $"1004,2019-08-12,F,North\n1005,2019-08-12,F,South\n1006,2019-08-12,F,\"{cell}\"\n");

        (herd.Mobs.At(herd.Find("1006"), Herds.Day.Number(Words.Date("2026-01-01"))) != Herds.MobStays.NotKnown).ShouldBe(isKnown);
    }

    [Theory]
    [InlineData("1001")]
    [InlineData("1002")]
    public void A_move_of_the_herd_is_another_giver_of_a_name_than_a_move_of_one(string animal) =>
        Shown.Stays(Herd("2026-01-01,herd,mob,Norths,", $"2026-02-01,{animal},mob,Norths,"), animal).ShouldBe("Norths from 2026-01-01 (2)");

    [Fact]
    public void A_move_to_the_mob_she_is_in_is_no_break() =>
        Shown.Stays(Herd("2026-01-01,1003,mob,West,", "2026-02-01,1003,mob,west,", "2026-03-01,1003,mob,East,"), "1003")
            .ShouldBe("West from 2026-01-01 (2); East from 2026-03-01 (4)");

    [Fact]
    public void Two_moves_on_one_day_to_different_mobs_contradict_each_other() =>
        Shown.Stays(Herd("2026-01-01,1003,mob,West,", "2026-01-01,1003,mob,East,", "2026-02-01,1003,mob,East,"), "1003")
            .ShouldBe("? from 2026-01-01 (2); East from 2026-02-01 (4)");

    [Fact]
    public void A_move_that_cannot_be_read_hides_the_mob_until_the_next_move() =>
        Shown.Stays(Herd("2026-01-01,1003,mob,West,", "2026-02-01,1003,mob,,", "2026-03-01,1003,mob,East,"), "1003")
            .ShouldBe("West from 2026-01-01 (2); ? from 2026-02-01 (3); East from 2026-03-01 (4)");

    [Fact]
    public void A_move_on_an_unreadable_day_hides_the_mob_always() =>
        Shown.Stays(Herd("2026-01-01,1003,mob,West,", "2026-02,1003,mob,East,"), "1003").ShouldBe("? from start (3)");

    [Fact]
    public void A_row_that_may_have_been_a_move_makes_the_column_uncertain() =>
        Shown.Stays(Herd("2026-01-01,1001,foot trim,,"), "1001").ShouldBe("? from start (2)");

    [Fact]
    public void A_move_of_an_unknown_animal_may_have_been_anyones() =>
        Shown.Stays(Herd("2026-01-01,1003,mob,West,", "2026-02-01,9999,mob,East,"), "1003")
            .ShouldBe("West from 2026-01-01 (2); ? from 2026-02-01 (3)");

    [Fact]
    public void Mobs_are_numbered_by_name_and_none_is_listed_that_only_a_mob_row_names() =>
        Herd("2026-01-01,1003,mob,Z,", "2026-01-01,1001,mob,A,", "2026-01-01,mob:Q,mastitis,,").Mobs.Names.ShouldBe(["A", "North", "South", "Z"]);
}
