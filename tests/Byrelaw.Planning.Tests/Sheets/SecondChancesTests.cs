using Byrelaw.Planning.Sheets;

namespace Byrelaw.Planning.Tests.Sheets;

/// <summary>Whoever is begun and was surely not seen in heat in time is treated once more, for the session that a heat then serves.</summary>
public sealed class SecondChancesTests
{
    // Prostaglandin on 10 October: heats of the 12th to the 15th, transfers of the 20th and 21st. Once more on day 11 to 14, 21 to 24 October: heats of the 23rd to the 29th; those of
    // the 26th to the 28th serve the second session's 3 and 4 November, two weeks later.
    private static readonly WrittenPlan Farm = new()
    {
        Programme = "collection on 2026-10-12, 2 times every 14 days\ntransfer 8 days after collection, over 2 days\nprepare recipients by \"Prostaglandin once\"",
        Keeping = "calving, mastitis, sale, purchase, mating, transfer, drying off, bull in, bull out, pregnancy test, heat, hormone given, mob",
        More = """
            event heat
            event hormone given  marks treatment, with method is text, with session is number, with step is number
            rules for treatment
            safety rule "Well"
              needs no mastitis in the last 7 days
              because "b"

            """,
        Columns = "date,animal,kind,value,unit,method,session,step",
        Events =
        [
            .. Enumerable.Range(2, 3).SelectMany(cow => new[] { $"2026-06-01,{cow},calving,,,,,", $"2026-10-01,{cow},serum copper,9,umol/L,,," }),
            .. Enumerable.Range(2, 3).Select(cow => $"2026-10-10,{cow},hormone given,,,Prostaglandin once,1,0"),
        ],
        UpTo = new(2026, 10, 18),
    };

    [Fact]
    public void Who_was_not_seen_in_heat_stands_on_the_later_sessions_sheet()
    {
        var seen = Farm with { Events = [.. Farm.Events, "2026-10-13,3,heat,,,,,"] };
        Again(seen).ShouldBe(["2 on 21 October, day 11, session 2", "4 on 21 October, day 11, session 2"]);
    }

    [Fact]
    public void A_heat_that_nobody_promises_to_write_down_may_have_been_seen() =>
        Again(Farm with { Keeping = Farm.Keeping.Replace(", heat", "") }).ShouldBeEmpty();

    [Fact]
    public void Before_the_records_reach_the_last_day_of_the_first_chance_nobody_knows() =>
        Again(Farm with { UpTo = new(2026, 10, 14) }).ShouldBeEmpty();

    [Fact]
    public void Who_does_not_pass_the_safety_rules_is_given_nothing() =>
        Again(Farm with { Events = [.. Farm.Events, "2026-10-17,3,mastitis,,,,,", "2026-10-15,4,mastitis,,,,,"] }).ShouldBe(["2 on 21 October, day 11, session 2"]);

    [Fact]
    public void Who_may_not_carry_in_the_session_that_the_heat_serves_is_given_nothing() =>
        Again(Farm with { Events = [.. Farm.Events.Where(row => !row.Contains(",2,serum copper", StringComparison.Ordinal))] }).ShouldBe(["3 on 21 October, day 11, session 2", "4 on 21 October, day 11, session 2"]);

    [Fact]
    public void It_goes_on_record_as_a_new_day_0_and_nobody_is_treated_a_third_time()
    {
        var rulebook = Farm.Rulebook;
        var rows = MorningSheets.Of(Planner.Plan(rulebook, Farm.Herd(rulebook), Farm.UpTo)).OfType<HormoneSheet>().SelectMany(sheet => sheet.Rows.Where(row => row.IsSecondChance)).ToList();
        rows.Select(row => row.StepOnRecord).Distinct().ShouldBe([0]);
        var done = Farm with { Events = [.. Farm.Events, .. rows.Select(row => $"2026-10-21,{row.Who.Number},hormone given,,,Prostaglandin once,2,{row.StepOnRecord}")], UpTo = new(2026, 10, 22) };
        Again(done).ShouldBeEmpty();
    }

    private static IEnumerable<string> Again(WrittenPlan farm)
    {
        var rulebook = farm.Rulebook;
        return MorningSheets.Of(Planner.Plan(rulebook, farm.Herd(rulebook), farm.UpTo)).OfType<HormoneSheet>()
            .SelectMany(sheet => sheet.Rows.Where(row => row.IsSecondChance && row.IsGiven).Select(row => $"{row.Who.Number} on {sheet.Date.Day} October, day {row.Day}, session {sheet.Session.Number}")).Order(StringComparer.Ordinal);
    }
}
