namespace Byrelaw.Planning.Tests.LeadTimes;

public sealed class TaskDatesTests
{
    private const string Sampling = """
        task "Sample for copper"
          for recipients
          due 45 days before first transfer
          not before 75 days before first transfer
          takes 1 week
          results take 10 days
          settles serum copper
          because "b"
        """;

    // Cow 3 has a good result that is too old by the transfers, cows 2 and 4 have none; all calved in time.
    private static readonly WrittenPlan Farm = new()
    {
        More = Sampling,
        Events =
        [
            "2026-07-01,1,calving,,", "2026-07-01,2,calving,,", "2026-07-01,3,calving,,", "2026-07-01,4,calving,,",
            "2026-07-30,3,serum copper,9,umol/L",
        ],
    };

    [Fact]
    public void A_task_is_worked_back_from_its_results_and_what_it_takes()
    {
        var task = Planned(Farm, new(2026, 8, 1));

        // 20 October less 45 days is 5 September; less 17 days 19 August; 75 days before the transfer is 6 August.
        (task.Due, task.LastStart, task.Earliest).ShouldBe((new LocalDate(2026, 9, 5), new LocalDate(2026, 8, 19), new LocalDate(2026, 8, 6)));
        (task.DaysPast, task.IsPast, task.InTimeFor).ShouldBe((0, false, null));
    }

    [Fact]
    public void It_is_for_the_animals_whose_records_are_missing_or_lapse_before_the_day()
    {
        var task = Planned(Farm, new(2026, 8, 1));
        task.Animals.Select(animal => (animal.Number, animal.Why, animal.Rule)).ShouldBe([
            ("2", Need.Missing, "Copper"), ("3", Need.Lapses, "Copper"), ("4", Need.Missing, "Copper")]);
    }

    [Fact]
    public void Nobody_samples_a_cow_that_is_sold()
    {
        var sold = new WrittenPlan { More = Sampling, Events = [.. Farm.Events, "2026-07-31,4,sale,,"] };
        Planned(sold, new(2026, 8, 1)).Animals.Select(animal => animal.Number).ShouldBe(["2", "3"]);
    }

    [Fact]
    public void A_last_day_that_has_passed_says_for_which_collection_it_would_be_in_time()
    {
        var task = Planned(Farm, new(2026, 8, 29));
        (task.DaysPast, task.IsPast).ShouldBe((10, true));
        task.InTimeFor.ShouldBe(new LocalDate(2026, 10, 22));
    }

    [Theory]
    [InlineData("45 days before first transfer")]
    [InlineData("2 weeks before collection")]
    [InlineData("3 days after final transfer")]
    [InlineData("1 week before end of milking")]
    [InlineData("40 days before turnout")]
    [InlineData("2 days before first treatment")]
    public void It_is_in_time_for_the_first_collection_that_moves_its_last_day_to_today_and_for_none_where_it_does_not_move(string due)
    {
        // Of the programme's dates one stands by itself, and one hangs on it by another.
        var (rulebook, lists) = new WrittenPlan
        {
            Programme = "collection on 2026-10-12\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\ndate end of milking on 2026-08-25\ndate turnout 5 weeks after end of milking",
            More = Sampling.Replace("45 days before first transfer", due).Replace("  not before 75 days before first transfer\n", ""),
            Events = Farm.Events,
        }.Judged();
        var today = new LocalDate(2026, 11, 1);
        var task = On(rulebook.Programme!);
        task.DaysPast.ShouldBeGreaterThan(0);

        if (task.InTimeFor is { } day)
        {
            On(MovedProgramme.To(rulebook.Programme!, "collection", day)).LastStart.ShouldBe(today);
        }
        else
        {
            On(MovedProgramme.To(rulebook.Programme!, "collection", new(2027, 3, 1))).LastStart.ShouldBe(task.LastStart);
        }

        TaskDates On(Programme programme) => TaskDates.Of(rulebook.Plans, programme, lists, today).ShouldHaveSingleItem();
    }

    [Fact]
    public void A_task_for_a_date_that_the_programme_does_not_set_does_not_arise()
    {
        var (rulebook, lists) = new WrittenPlan { More = Sampling.Replace("before first transfer", "before planned start of mating") }.Judged();
        TaskDates.Of(rulebook.Plans, rulebook.Programme!, lists, new(2026, 8, 1)).ShouldBeEmpty();
    }

    private static TaskDates Planned(WrittenPlan farm, LocalDate today)
    {
        var (rulebook, lists) = farm.Judged();
        return TaskDates.Of(rulebook.Plans, rulebook.Programme!, lists, today).ShouldHaveSingleItem();
    }
}
