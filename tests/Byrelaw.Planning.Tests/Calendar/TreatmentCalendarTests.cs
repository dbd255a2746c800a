using CsCheck;

namespace Byrelaw.Planning.Tests.Calendar;

public sealed class TreatmentCalendarTests
{
    // Published: GnRH and insert on day 0, removal and prostaglandin on day 7, GnRH on day 9 (McDougall and others 2013, Theriogenology 79:882);
    // transfer nine days after the device comes out, so on day 16 (two trials of timed transfer).
    [Fact]
    public void A_published_schedule_is_worked_back_from_the_transfer_day()
    {
        var rulebook = new WrittenPlan { Programme = "collection on 2026-10-12\ntransfer 8 days after collection" }.Rulebook;
        var session = Session.Of(rulebook.Programme!).ShouldHaveSingleItem();
        session.FirstTransfer.ShouldBe(new LocalDate(2026, 10, 20));

        var calendar = TreatmentCalendar.Of(rulebook.Plans.Method("Progesterone insert")!, session);
        calendar.Days.Select(day => day.Date).ShouldBe([new(2026, 10, 4), new(2026, 10, 11), new(2026, 10, 13)]);
        calendar.Heats.ShouldHaveSingleItem().Date.ShouldBe(new LocalDate(2026, 10, 13));
        Period.DaysBetween(calendar.Start, session.FirstTransfer).ShouldBe(16);
        calendar.InWindow.ShouldBe(1);
    }

    [Fact]
    public void A_heat_serves_a_transfer_if_her_day_is_6_to_8_and_a_day_at_most_from_the_age_of_the_embryos()
    {
        // Collected on the 12th, the embryos are seven days old on the 20th and eight on the 21st: a heat of the 15th is day 6 on the 21st, two days from eight.
        // Within a day of the embryo's age: 88% of pregnancies (Lindner and Wright 1983).
        var session = Session.Of(new WrittenPlan().Rulebook.Programme!).Single();
        var window = session.Window;
        window.Heats.ShouldBe([new(2026, 10, 12), new(2026, 10, 13), new(2026, 10, 14)]);
        window.ServedBy(new(2026, 10, 12)).ShouldBe([new(2026, 10, 20)]);
        window.ServedBy(new(2026, 10, 14)).ShouldBe([new(2026, 10, 20), new(2026, 10, 21)]);
        window.ServedBy(new(2026, 10, 15)).ShouldBeEmpty();
        window.ServedBy(new(2026, 10, 13)).Count().ShouldBe(2);
    }

    [Fact]
    public void How_near_her_day_must_be_to_the_age_of_the_embryos_is_what_the_programme_says()
    {
        var said = new WrittenPlan { Programme = "collection on 2026-10-12\ntransfer 8 days after collection, over 2 days\nrecipients on day 6 to 8, within 2 days of the embryo" };
        Session.Of(said.Rulebook.Programme!).Single().Window.Heats.ShouldBe([new(2026, 10, 12), new(2026, 10, 13), new(2026, 10, 14), new(2026, 10, 15)]);
        var exactly = new WrittenPlan { Programme = "collection on 2026-10-12\ntransfer 8 days after collection, over 2 days\nrecipients on day 6 to 8, within 0 days of the embryo" };
        Session.Of(exactly.Rulebook.Programme!).Single().Window.Heats.ShouldBe([new(2026, 10, 13)]);
    }

    [Fact]
    public void Where_no_heat_can_serve_there_is_nothing_to_watch()
    {
        var rulebook = new WrittenPlan { Programme = "collection on 2026-10-12\ntransfer 8 days after collection\nrecipients on day 3" }.Rulebook;
        TreatmentCalendar.Of(rulebook.Plans.Method("Natural heat")!, Session.Of(rulebook.Programme!).Single()).InWindow.ShouldBe(0);
        PlanCalendar.Of(Season.OfDays(rulebook, new(2026, 8, 1))).Entries.ShouldNotContain(entry => entry.Kind == EntryKind.HeatWatch && entry.Subject == "Natural heat");
    }

    [Fact]
    public void Prostaglandin_starts_where_most_heats_fall_into_the_window()
    {
        var rulebook = new WrittenPlan().Rulebook;
        var calendar = TreatmentCalendar.Of(rulebook.Plans.Method("Prostaglandin once")!, Session.Of(rulebook.Programme!).Single());

        // Heats from 12 to 14 October serve: those of days 2 to 4 do if day 0 is 10 October, and those of day 5 come a day late.
        calendar.Start.ShouldBe(new LocalDate(2026, 10, 10));
        calendar.InWindow.ShouldBe(0.9, 1e-9);
        calendar.Again.ShouldBe((new LocalDate(2026, 10, 21), new LocalDate(2026, 10, 24)));
    }

    [Fact]
    public void With_one_heat_date_only_the_commonest_day_is_aimed_at_it()
    {
        var plan = new WrittenPlan { Programme = "collection on 2026-10-12\ntransfer 8 days after collection\nrecipients on day 7" };
        var rulebook = plan.Rulebook;
        var calendar = TreatmentCalendar.Of(rulebook.Plans.Method("Prostaglandin once")!, Session.Of(rulebook.Programme!).Single());
        calendar.Start.ShouldBe(new LocalDate(2026, 10, 10));
        calendar.InWindow.ShouldBe(0.45, 1e-9);
    }

    [Fact]
    public void No_start_has_more_heats_in_the_window() => Gen.Select(Gen.Int[0, 6], Gen.Int[0, 4], Gen.Int[1, 4], Gen.Int[-12, 12]).Hold((from, more, days, other) =>
    {
        var rulebook = new WrittenPlan { Programme = $"collection on 2026-10-12\ntransfer 8 days after collection, over {days} days\nrecipients on day {from + 2} to {from + 2 + more}" }.Rulebook;
        var calendar = TreatmentCalendar.Of(rulebook.Plans.Method("Prostaglandin once")!, Session.Of(rulebook.Programme!).Single());
        var elsewhere = calendar.Heats.Where(heat => calendar.Window.Serves(heat.Date.PlusDays(other))).Sum(heat => heat.Share!.Value);
        calendar.InWindow.ShouldBeGreaterThanOrEqualTo(elsewhere - 1e-9);
    }, count: 100);

    [Fact]
    public void A_flush_is_worked_back_to_the_donors_first_day()
    {
        var plan = new WrittenPlan
        {
            Programme = "embryos flushed\ncollection on 2026-10-12\ntransfer on collection\nprepare donors by \"Superovulation\"",
            More = """
                method "Superovulation"
                  for donors
                  day 0 "Device"
                  day 4 morning "FSH"
                  counts as heat on day 8
                  flushed on day 15
                  because "b"
                """,
        };
        var rulebook = plan.Rulebook;
        var session = Session.Of(rulebook.Programme!).Single();
        TreatmentCalendar.ForDonors(rulebook.Plans.Method("Superovulation")!, session).Days.Select(day => day.Date).ShouldBe([new(2026, 9, 27), new(2026, 10, 1)]);
        session.FirstTransfer.ShouldBe(session.Collection!.Value);
        session.EmbryoAge(session.FirstTransfer).ShouldBe(7);
    }

    [Fact]
    public void Frozen_embryos_have_no_collection_and_any_heat_serves()
    {
        var frozen = new WrittenPlan { Programme = "embryos frozen\ntransfer on 2026-10-20", Lists = "  choose recipients from \"2\", judged on first transfer\n" }.Rulebook;
        var session = Session.Of(frozen.Programme!).Single();
        session.Collection.ShouldBeNull();
        session.EmbryoAge(session.FirstTransfer).ShouldBe(7);
        session.Window.Heats.Count().ShouldBe(3);
    }
}
