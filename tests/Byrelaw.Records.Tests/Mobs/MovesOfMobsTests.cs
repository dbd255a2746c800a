namespace Byrelaw.Records.Tests.Mobs;

public class MovesOfMobsTests
{
    private const string WithMobs = """
        animal,born,sex,mob
        1001,2019-08-12,F,North
        1002,2020-07-30,F,South
        1003,2021-08-01,F,
        """;

    private static Herds.Herd Herd(params string[] rows) => Read.Herd(Read.Heading(rows), WithMobs, Words.Keeping("2026-12-31"));

    [Fact]
    public void A_mob_that_moves_takes_its_members_along()
    {
        var herd = Herd("2026-02-01,mob:North,mob,Hill,");

        Shown.Stays(herd, "1001").ShouldBe("North from start (0); Hill from 2026-02-01 (2)");
        Shown.Stays(herd, "1002").ShouldBe("South from start (0)");
        Shown.Entries(herd, "1001", Words.Mob).ShouldBe("2026-02-01 (2)");
    }

    [Fact]
    public void Of_an_animal_in_no_known_mob_it_is_not_known_whether_she_moved()
    {
        var herd = Herd("2026-02-01,mob:North,mob,Hill,");

        Shown.Gaps(herd).ShouldBe("not known: 1003, mob, 2026-02-01 (line 2)\n");
        Shown.Stays(herd, "1003").ShouldBe("? from start (2)");
    }

    [Fact]
    public void A_death_in_a_mob_that_nobody_is_in_may_be_of_a_cow_bought_back_so_she_may_have_moved_before()
    {
        var herd = Herd("2025-02-01,mob:North,mob,Hill,", "2025-06-26,mob:Nowhere,death,,", "2025-06-29,1001,purchase,,");

        Shown.Stays(herd, "1001").ShouldBe("? from start (2)", "on 1 February 2025 she may have been here, and in North");
    }

    [Fact]
    public void Two_mobs_can_change_places_on_one_day()
    {
        var herd = Herd("2025-01-01,1003,mob,South,", "2026-02-01,mob:North,mob,South,", "2026-02-01,mob:South,mob,North,");

        Shown.Stays(herd, "1001").ShouldBe("North from start (0); South from 2026-02-01 (3)");
        Shown.Stays(herd, "1002").ShouldBe("South from start (0); North from 2026-02-01 (4)");
        Shown.Stays(herd, "1003").ShouldBe("South from 2025-01-01 (2); North from 2026-02-01 (4)");
    }

    [Fact]
    public void Moves_follow_each_other()
    {
        var herd = Herd(
            "2025-01-01,1001,mob,North,", "2026-03-01,mob:Hill,mob,River,", "2026-02-01,mob:North,mob,Hill,", "2026-02-15,1002,mob,Hill,", "2026-04-01,1001,mob,Barn,");

        Shown.Stays(herd, "1001").ShouldBe("North from 2025-01-01 (2); Hill from 2026-02-01 (4); River from 2026-03-01 (3); Barn from 2026-04-01 (6)");
        Shown.Stays(herd, "1002").ShouldBe(
            "? from 2026-02-01 (4); Hill from 2026-02-15 (5); River from 2026-03-01 (3)",
            "she has a move of her own, so the column does not count, and on 1 February she may have been in North");
    }

    [Fact]
    public void Whoever_joins_a_mob_on_the_day_it_moves_may_or_may_not_go_along() =>
        Shown.Stays(Herd("2026-02-01,1003,mob,North,", "2026-02-01,mob:North,mob,Hill,"), "1003").ShouldBe("? from 2026-02-01 (2)");

    [Fact]
    public void The_whole_herd_can_move()
    {
        var herd = Herd("2026-01-15,1001,sale,,", "2026-02-01,herd,mob,Hill,");

        Shown.Stays(herd, "1001").ShouldBe("North from start (0)", "she is gone");
        Shown.Stays(herd, "1002").ShouldBe("South from start (0); Hill from 2026-02-01 (3)");
        Shown.Stays(herd, "1003").ShouldBe("Hill from 2026-02-01 (3)");
    }
}
