using Byrelaw.Judging;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.LeadTimes;

/// <summary>Tasks for those who are asked about, each on days of her own.</summary>
public sealed class SessionTaskTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    private static WrittenPlan Farm(string lines) => new()
    {
        Programme = "collection on 2026-09-07, 2 times every 14 days\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare 2 recipients by \"Progesterone insert\"",
        Lists = "\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged from first transfer to final transfer\n",
        More = $"task \"Sample\"\n  for recipients\n{lines}\n  settles serum copper\n  because \"b\"\n",
        Events = [.. Enumerable.Range(1, 4).Select(cow => $"2026-05-01,{cow},calving,,")],
    };

    private static ImmutableArray<TaskDates> Planned(WrittenPlan farm)
    {
        var rulebook = farm.Rulebook;
        var draft = new Judge(rulebook, farm.Herd(rulebook)).JudgeAll();
        return TaskDates.Of(rulebook.Plans, rulebook.Programme!, draft.Lists, Today, Namer.Name(draft, Today));
    }

    [Fact]
    public void Without_a_due_the_rules_say_by_when_and_each_session_has_its_own_days()
    {
        // Results take 10 days. Day 0 is 30 August for session 1; 13 September for session 2, whose transfers end on 30 September: 60 days before that is 1 August.
        var tasks = Planned(Farm("  results take 10 days"));
        tasks.Select(task => (task.Session, string.Join(' ', task.Animals.Select(animal => animal.Number)))).ShouldBe([(1, "1 2"), (2, "3 4")]);
        tasks[0].ByHer.ShouldHaveSingleItem().Days.ShouldBe([new DateInterval(new(2026, 8, 1), new(2026, 8, 20))]);
        tasks[1].ByHer.ShouldHaveSingleItem().Days.ShouldBe([new DateInterval(new(2026, 8, 1), new(2026, 9, 3))]);
        (tasks[0].LastStart, tasks[0].IsPast).ShouldBe((new LocalDate(2026, 8, 20), false));
    }

    [Fact]
    public void With_a_due_the_earlier_counts_and_no_empty_window_is_a_task()
    {
        var early = Planned(Farm("  due 20 days before first treatment\n  not before 45 days before first transfer"));
        early[0].ByHer.ShouldHaveSingleItem().Days.ShouldBe([new DateInterval(new(2026, 8, 1), new(2026, 8, 10))]);
        var past = Planned(Farm("  due 40 days before first treatment"))[0];
        past.Animals.ShouldBeEmpty();
        (past.IsDone, past.IsPast).ShouldBe((true, false));
        past.WithoutADay.ShouldBe(["1", "2"]);
    }
}
