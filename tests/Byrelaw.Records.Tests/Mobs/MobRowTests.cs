namespace Byrelaw.Records.Tests.Mobs;

public class MobRowTests
{
    private const string WithMobs = """
        animal,born,sex,mob
        1001,2019-08-12,F,North
        1002,2020-07-30,F,South
        1003,2021-08,F,
        1004,2026-02-01,F,North
        """;

    private static Herds.Herd Herd(params string[] rows) => Read.Herd(Read.Heading(rows), WithMobs, Words.Keeping("2026-12-31", complete: (Words.Mob, "2010-01-01")));

    [Fact]
    public void An_event_of_a_mob_is_each_members_on_that_day()
    {
        var herd = Herd("2026-01-01,1002,mob,South,", "2026-03-01,1002,mob,North,", "2026-02-01,mob:North,bull in,,", "2026-04-01,mob:north,bull out,,");

        Shown.Entries(herd, "1001", Words.BullIn).ShouldBe("2026-02-01 (4)");
        Shown.Entries(herd, "1002", Words.BullIn).ShouldBe("");
        Shown.Entries(herd, "1002", Words.BullOut).ShouldBe("2026-04-01 (5)");
    }

    [Fact]
    public void Of_an_animal_in_no_known_mob_it_is_not_known_whether_the_event_was_hers() =>
        Shown.Gaps(Herd("2026-02-01,mob:North,bull in,,")).ShouldBe("not known: 1003, bull in, 2026-02-01 (line 2)\n");

    [Fact]
    public void Where_nobody_says_that_all_moves_are_on_record_an_event_of_a_mob_may_be_anybodys()
    {
        var herd = Read.Herd(Read.Heading(["2026-02-01,mob:North,mastitis,,"]), WithMobs, Words.Keeping("2026-12-31"));

        Shown.Entries(herd, "1001", Words.Mastitis).ShouldBe("");
        Shown.Gaps(herd).ShouldBe("not known: any animal, mastitis, 2026-02-01 (line 2)\n");
    }

    [Fact]
    public void A_bull_put_in_a_mob_is_the_mobs_and_no_entry_of_its_members_own()
    {
        var herd = Herd("2026-02-01,mob:North,bull in,,", "2026-02-01,1001,bull in,,", "2026-03-01,herd,bull out,,");

        herd.OwnRun(Words.BullIn.Id).Lines.ShouldBe([3]);
        herd.OwnRun(Words.BullOut.Id).Lines.ShouldBeEmpty();
        herd.MobRows.Spells.Select(row => (row.Mob, row.Line)).ShouldBe([(0, 2), (MobStays.NotKnown, 4)]);
    }

    [Fact]
    public void A_test_of_a_mob_or_the_herd_may_or_may_not_be_each_members()
    {
        var run = Herd("2026-03-01,herd,BVD virus,negative,", "2026-02-01,mob:South,BVD virus,pending,").GroupRun(Words.Virus.Id).ShouldNotBeNull();

        run.Mobs.ShouldBe([1, MobStays.NotKnown]);
        run.Lines.ShouldBe([3, 2]);
        run.Answers[0].ShouldBe(KindRun.NotKnown);
    }

    [Fact]
    public void A_test_of_a_mob_that_nobody_named_may_be_anybodys() =>
        Shown.Gaps(Herd("2026-03-01,mob:,BVD virus,positive,")).ShouldBe("not known: any animal, BVD virus, 2026-03-01 (line 2)\n");

    [Fact]
    public void An_event_of_the_herd_is_that_of_each_animal_present()
    {
        var herd = Herd("2026-01-01,herd,mastitis,,", "2025-01-01,1001,sale,,");

        Shown.Entries(herd, "1001", Words.Mastitis).ShouldBe("");
        Shown.Entries(herd, "1002", Words.Mastitis).ShouldBe("2026-01-01 (2)");
        Shown.Entries(herd, "1003", Words.Mastitis).ShouldBe("2026-01-01 (2)");
        Shown.Entries(herd, "1004", Words.Mastitis).ShouldBe("", "she was not born yet");
        herd.Coverage.Gaps.ShouldBeEmpty();
    }

    [Fact]
    public void Of_an_animal_that_may_not_be_born_yet_it_is_not_known() =>
        Shown.Gaps(Herd("2021-08-15,herd,mastitis,,")).ShouldBe("not known: 1003, mastitis, 2021-08-15 (line 2)\n");

    [Fact]
    public void The_same_event_from_a_mob_and_an_animal_stands_once()
    {
        var herd = Herd("2026-03-01,mob:North,mastitis,,", "2026-03-01,1001,mastitis,,", "2026-03-01,herd,mastitis,,");

        Shown.Entries(herd, "1001", Words.Mastitis).ShouldBe("2026-03-01 (2)");
    }

    [Fact]
    public void A_measure_of_a_mob_is_nobodys_own_and_kept_by_mob()
    {
        var herd = Herd("2026-03-01,mob:South,serum copper,8,umol/L", "2026-03-02,mob:North,serum copper,pending,", "2026-02-01,mob:North,serum copper,<3,umol/L");
        var run = herd.MobRuns[Words.Copper.Id].ShouldNotBeNull();

        herd.Mobs.Names.ShouldBe(["North", "South"]);
        run.Starts.ShouldBe([0, 2, 3]);
        run.Lines.ShouldBe([4, 3, 2]);
        run.Low.ShouldBe([0, double.NegativeInfinity, 8]);
        run.High.ShouldBe([double.BitDecrement(3), double.PositiveInfinity, 8]);
        herd.Runs[Words.Copper.Id].Days.ShouldBeEmpty();
        herd.MobRuns[Words.Mastitis.Id].ShouldBeNull();
        herd.MobRuns[Words.Virus.Id].ShouldBeNull();
    }

    [Fact]
    public void A_mobs_sample_whose_value_cannot_be_read_is_a_sample_with_result_not_known()
    {
        var herd = Herd("2026-03-01,mob:North,serum copper,lots,umol/L");

        herd.MobRuns[Words.Copper.Id]!.Low.ShouldBe([double.NegativeInfinity]);
        herd.Coverage.Gaps.ShouldBeEmpty();
        herd.Problems.Length.ShouldBe(1);
    }

    [Fact]
    public void A_mob_sold_is_gone_and_a_mob_bought_was_not_there_before()
    {
        var herd = Herd("2026-03-01,mob:South,sale,,", "2025-03-01,mob:North,purchase,,");

        Shown.Membership(herd, "1002").ShouldBe("Out from start (0); In from 2020-07-30 (0); Out from 2026-03-01 (2)");
        Shown.Membership(herd, "1001").ShouldBe("Out from start (0); In from 2025-03-01 (3)");
        Shown.Membership(herd, "1003").ShouldBe(
            "Out from start (0); NotKnown from 2021-08-01 (0)", "she may be of the mob bought, and of the mob sold");
    }
}
