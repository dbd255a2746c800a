using Byrelaw.Language.Rulebooks.Plans;

namespace Byrelaw.Language.Tests.Plans;

public sealed class PlanStatementTests
{
    private static readonly Rulebook Farm = Rules.Good(Rules.Words + PlanSnippets.Everything);

    [Fact]
    public void Every_statement_prints_the_one_way_and_reads_back()
    {
        var text = CanonicalText.Of(Farm);
        CanonicalText.Of(Rules.Good(text)).ShouldBe(text);
        Snapshot.Verify(text, extension: "byre");
    }

    [Fact]
    public void Dates_are_reckoned_from_one_another_whatever_their_order()
    {
        var programme = Farm.Programme.ShouldNotBeNull();
        programme.Dates.Select(date => (date.Name, date.Date)).ShouldBe([
            ("drenching", new LocalDate(2026, 9, 13)), ("first treatment", new LocalDate(2026, 10, 4)), ("collection", new LocalDate(2026, 10, 12)),
            ("first transfer", new LocalDate(2026, 10, 20)), ("final transfer", new LocalDate(2026, 10, 21)),
            ("planned start of mating", new LocalDate(2026, 10, 26))]);
        programme.Choices.Select(choice => (choice.FromDate, choice.ToDate)).ShouldBe([("collection", null), ("first treatment", null), ("first transfer", "final transfer")]);
        programme.Aims.Collections.ShouldBe([new(2026, 10, 12), new(2026, 10, 26), new(2026, 11, 9)]);
    }

    [Fact]
    public void The_most_particular_assumption_that_fits_a_case_counts()
    {
        var plans = Farm.Plans;
        plans.Assume(AssumedQuantity.PregnantPerTransfer, EmbryoState.Fresh, Carrier.Heifers)!.Share!.Counted.ShouldBe(new Counting(36, 80, "transfers"));
        plans.Assume(AssumedQuantity.PregnantPerTransfer, EmbryoState.Frozen, Carrier.Heifers)!.Share!.Value.ShouldBe(0.40);
        plans.Assume(AssumedQuantity.EmbryosPerOocyte, sexedSemen: true)!.Share!.Value.ShouldBe(0.17);
        plans.Assume(AssumedQuantity.EmbryosPerOocyte)!.Share!.Value.ShouldBe(0.22);
        plans.Assume(AssumedQuantity.Gestation, animals: Carrier.Cows, breed: "friesian")!.Mean.ShouldBe(279.4);
        plans.Assume(AssumedQuantity.Gestation, animals: Carrier.Heifers, breed: "Friesian")!.Mean.ShouldBe(282);
        plans.CostOf(plans.Method("natural heat")!).ShouldBe(new Money(2, "NZD"));
        plans.CostOf(plans.Method("Progesterone insert")!).ShouldBe(new Money(55, "NZD"));
        plans.CostOf(plans.Method("Prostaglandin once")!).ShouldBeNull();
    }

    [Fact]
    public void A_caution_goes_with_every_step_that_speaks_of_it()
    {
        var steps = Farm.Plans.Methods.SelectMany(method => method.Steps).ToList();
        steps.Count(step => step.Cautions.Length == 1).ShouldBe(3);
        steps.ShouldAllBe(step => step.Cautions.IsEmpty != step.Text.Contains("rostaglandin"));
    }

    [Fact]
    public void Visits_leave_out_days_off_and_visits_after_them_follow()
    {
        var (visits, aims) = (Farm.Plans.Visits, Farm.Programme!.Aims);
        var collection = VisitDays.Of(visits, "collection", "north", aims.Holidays);

        // Every second Monday from 6 July: without 3 August, and without 26 October, which is a holiday.
        collection.ShouldBe([
            new(2026, 7, 6), new(2026, 7, 20), new(2026, 8, 17), new(2026, 8, 31), new(2026, 9, 14), new(2026, 9, 28),
            new(2026, 10, 12), new(2026, 10, 13), new(2026, 11, 9), new(2026, 11, 23), new(2026, 12, 7)]);
        VisitDays.Of(visits, "transfer", "North", aims.Holidays).ShouldBe(collection.Select(day => day.PlusDays(8)));
        VisitDays.Of(visits, "collection", "South", aims.Holidays).ShouldBeEmpty();
    }

    [Fact]
    public void A_rate_of_the_farms_own_replaces_the_one_of_the_file_it_uses()
    {
        var rulebook = Rules.Good(Rules.Read(new RuleFilesInMemory()
            .Add("base.byre", "assume oocytes per collection 9, spread 6\n  source \"example\"\n")
            .Add("farm.byre", "use \"base.byre\"\nassume oocytes per collection 14, spread 9\n  because \"Our last five sessions.\"\n")));
        var one = rulebook.Plans.Assumptions.ShouldHaveSingleItem();
        (one.Mean, one.Basis).ShouldBe((14, Basis.Local));
    }

    [Fact]
    public void A_visit_still_to_be_chosen_stands_on_the_first_that_is_possible()
    {
        var reading = Rules.Read(Rules.Words + """
            visits "collection" every 14 days from 2026-07-06 to 2026-12-18
            rules for donors
            rule "A"
              needs no heat ever
              because "b"
            programme "P"
              collection on a visit between 2026-10-01 and 2026-11-30
              transfer 8 days after collection
              choose donors from females, judged on collection, for looking only
            """);
        reading.Problems.ShouldHaveSingleItem().Code.ShouldBe("B1253");
        reading.Rulebook.Programme!.Date("collection").ShouldBe(new LocalDate(2026, 10, 12));
        reading.Rulebook.Programme.Aims.OnAVisit!.To.ShouldBe(new LocalDate(2026, 11, 30));
        reading.Rulebook.Programme.Aims.Collections.ShouldBeEmpty();
    }

    [Fact]
    public void Holidays_come_from_a_list_beside_the_file()
    {
        var reading = Rules.Read(new RuleFilesInMemory()
            .Add("farm.byre", "programme \"P\"\n  holidays \"holidays.txt\"\n")
            .Add("holidays.txt", "# New Zealand\r\n2026-10-26 Labour Day\r\n\r\n2026-12-25  Christmas Day\r\n"));
        reading.Rulebook.Programme!.Aims.Holidays.ShouldBe([new(new(2026, 10, 26), "Labour Day"), new(new(2026, 12, 25), "Christmas Day")]);
    }
}
