namespace Byrelaw.Planning.Tests.Calendar;

/// <summary>A calendar holds what will be done, and nothing else.</summary>
public sealed class CalendarByNameTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    [Fact]
    public void Only_methods_by_which_somebody_is_named_have_days_with_how_many()
    {
        // 1 and 2 may be used, 3 lacks copper.
        var farm = new WrittenPlan
        {
            Programme = "collection on 2026-09-07\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare recipients by \"Progesterone insert\", \"Prostaglandin once\"",
            Lists = "\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged from first transfer to final transfer\n",
            Cows = 3,
            Events = ["2026-05-01,1,calving,,", "2026-05-01,2,calving,,", "2026-05-01,3,calving,,", "2026-08-01,1,serum copper,20,umol/L", "2026-08-01,2,serum copper,20,umol/L"],
        };
        var rulebook = farm.Rulebook;
        var plan = Planner.Plan(rulebook, farm.Herd(rulebook), Today);
        plan.Sessions[0].Named.Select(animal => animal.Number).ShouldBe(["1", "2"]);
        var treated = plan.Calendar.Entries.Where(entry => entry.Kind is EntryKind.Treatment or EntryKind.HeatWatch).ToList();
        treated.Select(entry => (entry.Subject, entry.Animals, entry.From)).ShouldBe(
            [("Progesterone insert", 2, new LocalDate(2026, 8, 30)), ("Progesterone insert", 2, new(2026, 9, 6)), ("Progesterone insert", 2, new(2026, 9, 8))]);
    }
}
