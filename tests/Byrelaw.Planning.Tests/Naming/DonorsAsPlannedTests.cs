using Byrelaw.Judging;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.Naming;

/// <summary>Donors of a later session are judged as if collected in the sessions before.</summary>
public sealed class DonorsAsPlannedTests
{
    // Collections are 14 days apart, and a donor rests for three weeks.
    private static readonly WrittenPlan Farm = new()
    {
        Keeping = "calving, mastitis, sale, purchase, mating, transfer, drying off, bull in, bull out, pregnancy test, egg collection, flushing",
        Programme = "collection on 2026-09-07, 3 times every 14 days\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection",
        More = """
            event egg collection  marks collection
            event flushing        marks collection
            rules for donors
            rule "Rested"
              needs no egg collection in the last 20 days
              because "b"
            rule "Driven once"
              needs no flushing in the last 60 days
              because "b"

            """,
    };

    [Fact]
    public void Who_may_be_used_for_the_first_session_counts_as_collected_in_it_for_the_second_and_not_for_the_third()
    {
        MayBeUsed(Farm, new(2026, 8, 1)).ShouldBe([true, false, true], "she is not named for the second, so the third is four weeks after her last");
    }

    [Fact]
    public void Who_may_not_be_used_for_the_first_session_is_not_taken_to_be_collected()
    {
        // Mastitis on 20 July lies within the 60 days before 7 September, and not before 21 September.
        MayBeUsed(Farm with { Events = ["2026-07-20,1,mastitis,,"] }, new(2026, 8, 1)).ShouldBe([false, true, false]);
    }

    [Fact]
    public void Once_the_day_is_past_only_the_book_counts()
    {
        var later = Farm with { UpTo = new(2026, 9, 8) };
        MayBeUsed(later, new(2026, 9, 8))[1].ShouldBe(true, "nothing is on record of the day before");
        MayBeUsed(later with { Events = ["2026-09-07,1,egg collection,,"] }, new(2026, 9, 8))[1].ShouldBe(false);
        MayBeUsed(later with { UpTo = new(2026, 9, 7) }, new(2026, 9, 7))[1].ShouldBe(false, "on its day it is still planned");
    }

    [Fact]
    public void A_session_that_is_given_up_collects_nobody()
    {
        MayBeUsed(Farm with { More = Farm.More + "stopped session 1\n  because \"No team.\"\n  agreed by \"farmer\" on 2026-08-01\n" }, new(2026, 8, 1))[1].ShouldBe(true);
    }

    private static ImmutableArray<bool> MayBeUsed(WrittenPlan farm, LocalDate today)
    {
        var rulebook = farm.Rulebook;
        return [.. JudgedSession.Of(new Judge(rulebook, farm.Herd(rulebook)).JudgeAll(), today).Select(session => session.Donors!.Animals.Single().Answer.MayBeUsed())];
    }
}
