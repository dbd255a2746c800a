namespace Byrelaw.Judging.Tests.HandWorked;

/// <summary>Results, rows that cannot be read, mobs and standing.</summary>
public sealed class ResultTests
{
    private static readonly WrittenFarm Farm = new();

    [Fact]
    public void Latest_needs_no_completeness() =>
        new WrittenFarm { Keeps = "complete for heat since 2020-01-01", Events = ["2026-08-20,7,body condition,4.5"] }
            .Says("latest body condition in the last 45 days between 4.0 and 5.5", "2026-09-01").ShouldBe("True");

    [Fact]
    public void No_result_is_not_known() =>
        Farm.Says("latest body condition in the last 45 days between 4.0 and 5.5", "2026-09-01").ShouldBe("Unknown");

    [Theory]
    [InlineData("")]
    [InlineData("pending")]
    [InlineData("haemolysed")]
    public void An_older_result_never_stands_in_for_one_that_is_not_known(string answer) =>
        Farm.With("2026-08-01,7,BVD virus,negative", $"2026-08-20,7,BVD virus,{answer}").Says("latest BVD virus is negative", "2026-09-01").ShouldBe("Unknown");

    [Fact]
    public void Two_results_on_the_latest_day_must_agree()
    {
        var farm = Farm.With("2026-08-20,7,BVD virus,negative", "2026-08-20,7,BVD virus,positive");
        farm.Says("latest BVD virus is negative", "2026-09-01").ShouldBe("Unknown");
        farm.Says("latest BVD virus is not negative", "2026-09-01").ShouldBe("Unknown");
    }

    [Theory]
    [InlineData("latest serum copper at least 3 umol/L", "False")]
    [InlineData("latest serum copper less than 3 umol/L", "True")]
    [InlineData("latest serum copper at least 2 umol/L", "Unknown")]
    public void Below_3_answers_what_every_value_below_3_answers(string condition, string said) =>
        Farm.With("2026-08-20,7,serum copper,<3,umol/L").Says(condition, "2026-09-01").ShouldBe(said);

    [Fact]
    public void The_lowest_is_at_most_the_least_of_what_is_known()
    {
        var farm = Farm.With("2026-08-01,7,weight,390,kg", "2026-08-20,7,weight,,kg");
        farm.Says("lowest weight less than 400 kg", "2026-09-01").ShouldBe("True");
        farm.Says("lowest weight at least 380 kg", "2026-09-01").ShouldBe("Unknown");
        farm.Says("lowest weight at least 400 kg", "2026-09-01").ShouldBe("False");
    }

    [Fact]
    public void From_4_point_6_to_5_point_7_is_a_change_of_1_point_1()
    {
        Farm.With("2026-08-01,7,calving", "2026-08-01,7,body condition,5.7", "2026-08-20,7,body condition,4.6")
            .Says("change in body condition since last calving at least -1.1", "2026-09-01").ShouldBe("True");
        Farm.With("2026-08-01,7,calving", "2026-08-20,7,body condition,4.6")
            .Says("change in body condition since last calving at least -1.1", "2026-09-01").ShouldBe("Unknown", "one result is no change");
    }

    [Fact]
    public void A_share_of_a_fact_is_a_limit() =>
        new WrittenFarm { Animals = ["7,2020-05-01,F,Home,,,,550.5"], Events = ["2026-08-20,7,weight,330.3,kg"] }
            .Says("latest weight in the last 60 days at least 60% of mature weight", "2026-09-01").ShouldBe("True");

    [Theory]
    [InlineData("2026-08-20,7,masttis,,")] // every kind for her
    [InlineData("2026-08-20,77,mastitis,,")] // that kind for all
    [InlineData("20 August,7,mastitis,,")] // any day
    [InlineData("2026-10-20,7,mastitis,,")] // after the known day: any day
    [InlineData("2019-08-20,7,mastitis,,")] // before her birth: any day
    public void A_row_that_cannot_be_read_suspends_what_it_may_have_said(string row) =>
        Farm.With(row).Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe("Unknown");

    [Fact]
    public void A_row_that_cannot_be_read_is_a_sample_with_result_not_known() =>
        Farm.With("2026-08-01,7,BVD virus,negative", "20 August,7,BVD virus,negative").Says("latest BVD virus is negative", "2026-09-01").ShouldBe("Unknown");

    [Fact]
    public void A_mob_row_of_an_event_is_each_members() =>
        Farm.With("2026-08-20,mob:Home,mastitis").Says("no mastitis in the last 30 days", "2026-09-01").ShouldBe("False");

    [Fact]
    public void A_mob_row_of_a_measure_is_never_an_animals_own() =>
        Farm.With("2026-08-20,mob:Home,serum copper,9,umol/L").Says("latest serum copper at least 7 umol/L", "2026-09-01").ShouldBe("Unknown");

    [Fact]
    public void Results_of_her_mob_count_from_when_she_came()
    {
        var farm = new WrittenFarm { Animals = ["7,2020-05-01,F,,,,,", "8,2020-05-01,F,Home,,,,"] };
        const string Condition = "average serum copper of her mob in the last 90 days, from at least 1 animals, at least 7 umol/L";
        farm.With("2026-08-01,7,mob,Home", "2026-07-31,8,serum copper,9,umol/L").Says(Condition, "2026-09-01").ShouldBe("Unknown");
        farm.With("2026-08-01,7,mob,Home", "2026-08-01,8,serum copper,9,umol/L").Says(Condition, "2026-09-01").ShouldBe("True");
    }

    [Fact]
    public void In_the_top_is_told_from_whoever_has_no_value()
    {
        // 5 in the herd, top 20 per cent is 1 place. Hers is 120.
        var farm = new WrittenFarm { Animals = ["7,2020-05-01,F,,,,120,", "1,2020-05-01,F,,,,130,", "2,2020-05-01,F,,,,90,", "3,2020-05-01,F,,,,,", "4,2020-05-01,F,,,,80,"] };
        farm.Says("breeding index not in the top 20% of the herd", "2026-09-01").ShouldBe("True");
        farm.Says("breeding index in the top 40% of the herd", "2026-09-01").ShouldBe("Unknown");
        farm.Says("breeding index in the top 60% of the herd", "2026-09-01").ShouldBe("True");
    }

    [Fact]
    public void Among_those_with_a_value_nobody_is_asked_about_who_has_none()
    {
        // 4 have a value. The top 20 per cent is 1 place and one stands higher; the top 40 per cent is 2 places (1.6).
        var farm = new WrittenFarm { Animals = ["7,2020-05-01,F,,,,120,", "1,2020-05-01,F,,,,130,", "2,2020-05-01,F,,,,90,", "3,2020-05-01,F,,,,,", "4,2020-05-01,F,,,,80,"] };
        farm.Says("breeding index not in the top 20% of the herd with a value", "2026-09-01").ShouldBe("True");
        farm.Says("breeding index in the top 40% of the herd with a value", "2026-09-01").ShouldBe("True");

        // A fifth whose value cannot be read: 2 places of 5, and one or two stand higher.
        var unreadable = new WrittenFarm { Animals = [.. farm.Animals, "5,2020-05-01,F,,,,many,"] };
        unreadable.Says("breeding index in the top 40% of the herd with a value", "2026-09-01").ShouldBe("Unknown");
        unreadable.Says("breeding index not in the top 20% of the herd with a value", "2026-09-01").ShouldBe("True");
        (new WrittenFarm { Animals = [.. farm.Animals, "6,2020-05-01,F,,,,,"] }).Says("breeding index in the top 40% of the herd with a value", "2026-09-01").ShouldBe("True");
    }

    [Theory]
    [InlineData("2026-07-28", "False")] // bull out on 28 July: in on that day, the first of the window
    [InlineData("2026-07-27", "True")]
    public void She_is_with_the_bull_until_the_day_he_leaves(string until, string said) =>
        Farm.With("2026-07-01,7,bull in", $"{until},7,bull out").Says("not running with bull in the last 35 days", "2026-09-01").ShouldBe(said);
}
