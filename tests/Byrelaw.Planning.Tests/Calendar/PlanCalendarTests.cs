namespace Byrelaw.Planning.Tests.Calendar;

public sealed class PlanCalendarTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    [Fact]
    public void A_moved_programme_takes_its_dates_lists_and_rules_along()
    {
        var moved = MovedProgramme.To(new WrittenPlan().Rulebook, "collection", new LocalDate(2026, 10, 26)).Programme!;
        moved.Dates.Select(date => (date.Name, date.Date)).ShouldBe([
            ("first treatment", new LocalDate(2026, 10, 18)), ("collection", new(2026, 10, 26)), ("first transfer", new(2026, 11, 3)), ("final transfer", new(2026, 11, 4))]);
        moved.Choices.Select(choice => (choice.JudgedFrom, choice.JudgedTo)).ShouldBe([
            (new LocalDate(2026, 10, 26), new LocalDate(2026, 10, 26)), (new(2026, 10, 18), new(2026, 10, 18)), (new(2026, 11, 3), new(2026, 11, 4))]);
    }

    [Fact]
    public void Entries_keep_their_identifiers_when_the_programme_moves()
    {
        var first = Calendar("collection on 2026-10-12, 2 times every 14 days\ntransfer 8 days after collection\ndate first treatment 8 days before collection");
        var later = Calendar("collection on 2026-10-26, 2 times every 14 days\ntransfer 8 days after collection\ndate first treatment 8 days before collection");
        first.Entries.Select(entry => entry.Id).ShouldBeUnique();
        first.Entries.Select(entry => entry.Id).Order().ShouldBe(later.Entries.Select(entry => entry.Id).Order());
        foreach (var entry in first.Entries.Where(entry => entry.Kind == EntryKind.Treatment))
        {
            later.Entries.Single(other => other.Id == entry.Id).From.ShouldBe(entry.From.PlusDays(14));
        }

        first.Sessions.Select(session => session.Collection).ShouldBe([new LocalDate(2026, 10, 12), new LocalDate(2026, 10, 26)]);
    }

    [Fact]
    public void Weekends_holidays_and_days_on_which_no_team_comes_are_said()
    {
        var calendar = Calendar(
            "holiday 2026-10-19 \"Farmers' Day\"\ncollection on 2026-10-11\ntransfer 8 days after collection\ndate first treatment 8 days before collection",
            "visits \"collection\" every 14 days from 2026-07-06 to 2026-12-18\n");
        calendar.Entries.Single(entry => entry.Kind == EntryKind.Collection).Clashes.Select(clash => clash.Kind).ShouldBe([ClashKind.Weekend, ClashKind.NoVisit]);
        calendar.Entries.Single(entry => entry.Kind == EntryKind.Transfer).Clashes.ShouldHaveSingleItem().Holiday.ShouldBe("Farmers' Day");
    }

    [Fact]
    public void The_donors_clean_months_are_read_from_their_rules()
    {
        var time = Calendar(new WrittenPlan().Programme).CleanTimes.ShouldHaveSingleItem();
        time.ShouldBe(new CleanTime("donors", "Two clean months", new(2026, 8, 13), new(2026, 10, 12), "collection"));
    }

    private static PlanCalendar Calendar(string programme, string more = "")
    {
        var (rulebook, lists) = new WrittenPlan { Programme = programme, More = more }.Judged();
        return PlanCalendar.Of(Season.OfDays(rulebook, Today, lists));
    }
}
