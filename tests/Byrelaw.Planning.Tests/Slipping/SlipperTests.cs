using Byrelaw.Planning.Slipping;

namespace Byrelaw.Planning.Tests.Slipping;

public sealed class SlipperTests
{
    private static readonly WrittenPlan Farm = new()
    {
        Programme = "tank holds 6 frozen embryos\ncollection on 2026-10-12\ntransfer 8 days after collection\ndate first treatment 8 days before collection",
        More = "visits \"collection\" every 14 days from 2026-07-06 to 2026-12-18\n",
    };

    [Fact]
    public void Before_the_first_treatment_everything_moves_and_nothing_is_lost()
    {
        var insert = Slipped(SlipKind.CollectionLater, 3, new(2026, 10, 1)).Treatments[0];
        (insert.State, insert.Lost).ShouldBe((SlipState.NotStarted, 0));
        insert.After!.Start.ShouldBe(new LocalDate(2026, 10, 7));
    }

    [Fact]
    public void One_day_late_past_the_point_of_no_return_still_serves_and_two_do_not()
    {
        // Heats on 13 October: on 21 October she is on day 8, on 22 October on day 9.
        var one = Slipped(SlipKind.CollectionLater, 1, new(2026, 10, 12)).Treatments[0];
        (one.State, one.NoReturn!.Date, one.ServedAfter).ShouldBe((SlipState.Set, new LocalDate(2026, 10, 11), 1));
        one.Done(new(2026, 10, 12)).Length.ShouldBe(2);
        Slipped(SlipKind.CollectionLater, 2, new(2026, 10, 12)).Treatments[0].Lost.ShouldBe(1);
    }

    [Fact]
    public void Between_the_first_treatment_and_prostaglandin_a_vet_may_let_the_rest_wait() =>
        Slipped(SlipKind.CollectionLater, 2, new(2026, 10, 8)).Treatments[0].State.ShouldBe(SlipState.MayWait);

    [Fact]
    public void Without_eggs_the_tank_the_heat_and_the_next_visit_are_what_is_left()
    {
        var answer = Slipped(SlipKind.NoEggs, 0, new(2026, 10, 12));
        answer.After.ShouldBeNull();
        answer.Treatments.ShouldAllBe(treatment => treatment.ServedAfter == 0 || treatment.Before.InWindow == 0);
        var fallback = answer.Fallback;
        (fallback.FrozenEmbryos, fallback.ServeFrom, fallback.NextHeatFrom, fallback.NextCollection)
            .ShouldBe((6, new LocalDate(2026, 10, 12), new LocalDate(2026, 11, 2), new LocalDate(2026, 10, 26)));
    }

    [Fact]
    public void Embryos_that_a_courier_brings_two_days_late_are_too_old_to_go_in_fresh()
    {
        Slipped(SlipKind.NoCourier, 1, new(2026, 10, 20)).EmbryosOverAge.ShouldBeFalse();
        var answer = Slipped(SlipKind.NoCourier, 2, new(2026, 10, 20));
        answer.EmbryosOverAge.ShouldBeTrue();
        answer.After!.Collection.ShouldBe(new LocalDate(2026, 10, 12));
    }

    [Fact]
    public void A_late_removal_makes_the_heat_late_and_a_late_last_injection_leaves_it()
    {
        Late(day: 7, days: 1).ServedAfter.ShouldBe(1);
        Late(day: 7, days: 2).ServedAfter.ShouldBe(0);
        Late(day: 9, days: 2).ServedAfter.ShouldBe(1);
    }

    private static SlippedTreatment Late(int day, int days) =>
        Answer(new Slip(SlipKind.TreatmentLate, 1, days, new(2026, 10, 12), "progesterone insert", day)).Treatments[0];

    private static SlipAnswer Slipped(SlipKind kind, int days, LocalDate on) => Answer(new Slip(kind, 1, days, on));

    private static SlipAnswer Answer(Slip slip)
    {
        var (rulebook, lists) = Farm.Judged();
        return Slipper.Slip(rulebook, PlanCalendar.Of(Season.OfDays(rulebook, new(2026, 8, 1), lists)), slip)!;
    }
}
