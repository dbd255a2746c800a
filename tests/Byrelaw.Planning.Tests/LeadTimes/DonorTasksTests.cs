using Byrelaw.Judging;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.LeadTimes;

/// <summary>Tasks for donors: what settles records is done on days of each donor's own.</summary>
public sealed class DonorTasksTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    private static WrittenPlan Farm(string days) => new()
    {
        Programme = "collection on 2026-09-07, 2 times every 14 days\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare 2 recipients by \"Progesterone insert\"",
        Lists = "\n  choose donors from \"1\", judged on collection\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged from first transfer to final transfer\n",
        More = $"rules for donors\nrule \"Free of BVD\"\n  needs latest BVD virus in the last {days} days is negative\n  because \"b\"\ntask \"Test the donors\"\n  for donors\n  results take 10 days\n  settles BVD virus\n  because \"b\"\n",
        Events = [.. Enumerable.Range(1, 4).Select(cow => $"2026-05-01,{cow},calving,,")],
    };

    private static (ImmutableArray<NamedSession> Sessions, ImmutableArray<TaskDates> Tasks) Planned(WrittenPlan farm)
    {
        var rulebook = farm.Rulebook;
        var draft = new Judge(rulebook, farm.Herd(rulebook)).JudgeAll();
        var sessions = Namer.Name(draft, Today);
        return (sessions, TaskDates.Of(rulebook.Plans, rulebook.Programme!, draft.Lists, Today, sessions));
    }

    [Fact]
    public void A_donors_test_has_the_days_on_which_it_does_it()
    {
        // Collections on 7 and 21 September; results take 10 days. 20 days before the 7th is 18 August, before the 21st 1 September.
        var task = Planned(Farm("20")).Tasks;
        task.Select(one => one.Session).ShouldBe([1, 2]);
        task[0].ByHer.ShouldHaveSingleItem().Days.ShouldBe([new DateInterval(new(2026, 8, 18), new(2026, 8, 28))]);
        task[0].Animals.ShouldHaveSingleItem().AlsoFor.ShouldBeEmpty("what is sampled by 28 August is too old on 21 September");
        task[1].ByHer.ShouldHaveSingleItem().Days.ShouldBe([new DateInterval(new(2026, 9, 1), new(2026, 9, 11))]);
    }

    [Fact]
    public void A_test_that_holds_for_a_later_session_too_says_from_when()
    {
        // 60 days before 21 September is 23 July: any day from today does for both.
        var tasks = Planned(Farm("60")).Tasks;
        tasks[1].Animals.ShouldBeEmpty("she stands under the earliest session that it serves");
        var animal = tasks[0].Animals.ShouldHaveSingleItem();
        animal.Days.ShouldBe([new DateInterval(Today, new(2026, 8, 28))]);
        animal.AlsoFor.ShouldBe([(2, Today)]);
    }

    [Fact]
    public void What_cannot_be_in_hand_in_time_is_no_task_and_is_told()
    {
        var (sessions, tasks) = Planned(Farm("5"));
        tasks.ShouldAllBe(task => task.Animals.IsEmpty);
        sessions[0].DonorsToAsk.ShouldBeEmpty();
        sessions[0].DonorsNotInTime.ShouldHaveSingleItem().Closed!.First.ShouldBe(new(2026, 9, 2));
    }
}
