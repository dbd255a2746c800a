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

    [Fact]
    public void A_draft_and_an_explanation_judge_them_alike()
    {
        var rulebook = Farm.Rulebook;
        var herd = Farm.Herd(rulebook);
        var planned = JudgedSession.Of(new Judge(rulebook, herd).JudgeAll(), herd.KnownDay).Select(session => Said(session.Donors!)).ToList();
        planned.Select(said => said.Planned).ShouldBe(["", "2026-09-07 egg collection", "2026-09-07 egg collection"], "nothing is planned of who is not named");

        SessionDraft.Of(rulebook, herd, null).Lists.Where(list => list.Choice.List == "donors").Select(Said).ShouldBe(planned);
        foreach (var session in Enumerable.Range(1, 3))
        {
            Said(SessionDraft.Of(rulebook, herd, null, session: session).Lists.Single(list => list.Choice.List == "donors")).ShouldBe(planned[session - 1]);
        }

        SessionDraft.OfHer(rulebook, herd, 0, null).Select(draft => Said(draft.Lists.Single())).ShouldBe(planned);
        SessionDraft.OfHer(rulebook, herd, 0, null, asPlanned: false).Select(draft => draft.Lists.Single().Animals.Single().Answer.MayBeUsed()).ShouldBe([true, true, true]);

        // One day that is asked for is judged by the book.
        SessionDraft.Of(rulebook, herd, null, new(2026, 9, 21)).Lists[0].Animals.Single().Answer.MayBeUsed().ShouldBeTrue();
    }

    [Fact]
    public void Who_is_treated_for_a_flush_passes_the_safety_rules_of_her_list_on_every_day_of_it()
    {
        // She is flushed on 7 September, and treated from 27 August on. An illness of 20 August is five days past by the flush, and not by day 0.
        var farm = Farm with
        {
            Programme = "embryos flushed\ncollection on 2026-09-07\ntransfer 0 days after collection\nprepare donors by \"Superovulation\"",
            More = Farm.More.Replace("rules for donors", """
                method "Superovulation"
                  for donors
                  day 0 "FSH"
                  day 4 "GnRH"
                  counts as heat on day 4
                  flushed on day 11
                  because "b"
                event fever
                rules for donors
                safety rule "Well"
                  needs no fever in the last 10 days
                  because "b"
                """),
            Keeping = Farm.Keeping + ", fever",
            UpTo = new(2026, 8, 25),
        };
        (Answers(farm)[0], Collected(farm)).ShouldBe((true, 1));
        var ill = farm with { Events = ["2026-08-20,1,fever,,"] };
        (Answers(ill)[0], Collected(ill)).ShouldBe((true, 0), "her list is judged on the day of the flush, and she is not treated for it");

        static ImmutableArray<bool> Answers(WrittenPlan farm) => MayBeUsed(farm, farm.UpTo);

        static int Collected(WrittenPlan farm)
        {
            var rulebook = farm.Rulebook;
            return JudgedSession.Of(new Judge(rulebook, farm.Herd(rulebook)).JudgeAll(), farm.UpTo)[0].Collected.Length;
        }
    }

    private static (string Answer, string Planned, string Rules) Said(ListJudgement list) => (
        list.Animals.Single().Answer.ToString(), string.Join(", ", list.Planned.Select(row => $"{row.Date:uuuu-MM-dd} {row.Kind}")),
        string.Join(", ", list.Animals.Single().Rules.Select(rule => $"{rule.Name} {rule.Answer}")));

    private static ImmutableArray<bool> MayBeUsed(WrittenPlan farm, LocalDate today)
    {
        var rulebook = farm.Rulebook;
        return [.. JudgedSession.Of(new Judge(rulebook, farm.Herd(rulebook)).JudgeAll(), today).Select(session => session.Donors!.Animals.Single().Answer.MayBeUsed())];
    }
}
