namespace Byrelaw.Planning.Tests.Calendar;

public sealed class CalvingDatesTests
{
    // Norman and others 2009, Journal of Dairy Science 92:2259, more than 11 million calvings: Holstein 277.8 days in heifers and 279.4 in cows,
    // Jersey 278.4 and 280.0, Brown Swiss 287.2 and 287.5. A seven-day embryo of a Holstein in a cow: transfer + 272.
    [Theory]
    [InlineData("Holstein", 272, 271)]
    [InlineData("Jersey", 273, 271)]
    [InlineData("Brown Swiss", 281, 280)]
    [InlineData("Guernsey", 279, 278)]
    [InlineData("Ayrshire", 275, 275)]
    public void A_due_date_is_transfer_and_gestation_less_the_seven_days_of_the_embryo(string breed, int inCows, int inHeifers)
    {
        var session = SessionWith(breed);
        session.EmbryoAge(session.FirstTransfer).ShouldBe(7);
        var plans = Base.Plans;
        Period.DaysBetween(session.FirstTransfer, CalvingDates.Of(plans, session, Carrier.Cows)!.From).ShouldBe(inCows);
        Period.DaysBetween(session.FirstTransfer, CalvingDates.Of(plans, session, Carrier.Heifers)!.From).ShouldBe(inHeifers);
    }

    [Fact]
    public void A_cross_stands_between_its_breeds_and_the_second_days_embryos_are_a_day_older()
    {
        var session = SessionWith("Holstein", "Brown Swiss");
        var dates = CalvingDates.Of(Base.Plans, session, Carrier.Cows)!;
        dates.Gestation.ShouldBe((279.4 + 287.5) / 2, 1e-9);
        dates.To.ShouldBe(dates.From);
        Period.DaysBetween(dates.From, dates.Latest).ShouldBe(12);
    }

    [Fact]
    public void A_lost_cycle_calves_three_weeks_later_and_may_be_too_late()
    {
        var rulebook = new WrittenPlan
        {
            Programme = "calve by 2027-07-25\ndate planned start of mating on 2026-10-26\ncollection on 2026-10-12\ntransfer 8 days after collection",
            More = "assume gestation 282 days, spread 5 days\n  source \"Macmillan and Curnow 1976\"\nassume cost per lost cycle 120 NZD\n",
        }.Rulebook;
        var season = CalvingSeason.Of(rulebook.Plans, rulebook.Programme!, Session.Of(rulebook.Programme!));
        var session = season.Sessions.Single();

        // Fertilised on 13 October: 13 October 2026 and 282 days is 22 July 2027.
        session.InCows!.From.ShouldBe(new LocalDate(2027, 7, 22));
        (session.IsTooLate, session.LastTransferInTime).ShouldBe((false, new LocalDate(2026, 10, 23)));
        session.DaysFromStartOfMating.ShouldBe(-13);
        var lost = season.LostCycle!;
        (lost.Days, lost.NextHeat, lost.DueThen, lost.IsTooLateThen).ShouldBe((21, new LocalDate(2026, 11, 3), new LocalDate(2027, 8, 12), true));
        lost.Money!.Value.Amount.ShouldBe(120);
    }

    private static Rulebook Base => RulebookReader.Read(Repository.At("rulesets/assumptions.byre"), new Files())!.Rulebook;

    private static Session SessionWith(params string[] breeds)
    {
        var programme = new WrittenPlan().Rulebook.Programme!;
        return Session.Of(programme with { Aims = programme.Aims with { CalfBreeds = [.. breeds] } }).Single();
    }

    private sealed class Files : IRuleFiles
    {
        public string Resolve(string from, string relative) => Path.Combine(Path.GetDirectoryName(from)!, relative);

        public string Show(string path) => Path.GetFileName(path);

        public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
    }
}
