using System.Text;
using Byrelaw.Judging;
using Byrelaw.Judging.Supposing;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Planning.FindingOut;
using Byrelaw.Planning.Naming;
using Byrelaw.Records.Reading;
using CsCheck;

namespace Byrelaw.Planning.Tests.FindingOut;

/// <summary>On which days a record that is missed does it.</summary>
public sealed class UsefulDaysTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    private const string Scanned = """
        rules for treatment
        rule "Scanned"
          needs any of
            - no mating in the last 90 days
            - latest pregnancy test with method ultrasound from 28 days after last mating is empty
          because "b"
        task "Sample"
          for recipients
          results take 10 days
          due 1 day before first treatment
          settles serum copper
          because "b"

        """;

    private static WrittenPlan Farm(params ReadOnlySpan<string> events) => new()
    {
        Programme = "collection on 2026-09-07, 2 times every 14 days\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare 2 recipients by \"Progesterone insert\"",
        Lists = "\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged from first transfer to final transfer\n",
        Events = [.. events],
    };

    private static ImmutableArray<NamedSession> Named(WrittenPlan farm)
    {
        var rulebook = farm.Rulebook;
        return Namer.Name(new Judge(rulebook, farm.Herd(rulebook)).JudgeAll(), Today);
    }

    [Fact]
    public void A_sample_counts_from_the_day_that_its_rule_looks_back_to_until_its_result_is_just_in_hand()
    {
        // Transfers are on 15 and 16 September: 60 days before the 16th is 18 July, so any day from today does. Day 0 is 30 August, and results take 10 days.
        var farm = Farm("2026-05-01,1,calving,,") with { More = Scanned };
        var asked = Named(farm)[0].ToAsk.Single(animal => animal.Number == "1");
        var found = asked.ToFindOut.ShouldHaveSingleItem();
        (found.Record.Kind.Name, found.Record.Value).ShouldBe(("serum copper", "8"));
        found.Days.ShouldHaveSingleItem().ShouldBe(new DateInterval(new(2026, 8, 1), new(2026, 8, 20)));
    }

    [Fact]
    public void What_counts_too_late_makes_nobody_to_ask_and_says_what_it_is()
    {
        // Nothing that anybody can write down before 30 August tells her age.
        var farm = Farm("2026-05-01,1,calving,,", "2026-08-01,1,serum copper,20,umol/L") with
        {
            More = """
                rules for recipients
                rule "Late sample"
                  needs latest BVD virus in the last 10 days is negative
                  because "b"

                """,
        };
        var session = Named(farm)[0];
        session.ToAsk.ShouldBeEmpty();
        var standing = session.Methods[0].Animals[0];
        (standing.Failed, standing.Closed?.Kind.Name, standing.Closed?.First).ShouldBe((FailedCheck.NotKnownInTime, "BVD virus", new LocalDate(2026, 9, 6)));
    }

    /// <summary>Each day that is told, supposed, does it, and the day before and the day after do not: judged anew from the files, with all promises held against them again.</summary>
    [Fact]
    public void Each_day_does_it_and_the_day_before_and_after_do_not() => Gen.Select(Rows, Gen.Bool).Hold((rows, scanned) =>
    {
        var farm = Farm() with { Events = rows, More = scanned ? Scanned : "" };
        foreach (var session in Named(farm))
        {
            foreach (var animal in session.ToAsk)
            {
                foreach (var one in animal.ToFindOut)
                {
                    foreach (var run in one.Days)
                    {
                        run.ShouldAllBe(day => IsSure(farm, session, animal, one, day));
                        IsSure(farm, session, animal, one, run.End.PlusDays(1)).ShouldBe(one.Days.Any(other => other.Contains(run.End.PlusDays(1))));
                        if (run.Start > Today)
                        {
                            IsSure(farm, session, animal, one, run.Start.PlusDays(-1)).ShouldBe(one.Days.Any(other => other.Contains(run.Start.PlusDays(-1))));
                        }
                    }
                }
            }
        }
    }, count: 8);

    private static Gen<ImmutableArray<string>> Rows => Gen.OneOf(
        Gen.Int[1, 4].Select(cow => $"2026-05-01,{cow},calving,,"),
        Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], (cow, day) => $"2026-07-{day},{cow},mating,,"),
        Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], (cow, day) => $"2026-07-{day},{cow},serum copper,,"),
        Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], (cow, day) => $"2026-06-{day},{cow},serum copper,20,umol/L")).Array[3, 9].Select(rows => rows.Order().ToImmutableArray());

    /// <summary>Whether a result that is in hand on day 0, with all else that is asked, makes her sure of the session.</summary>
    private static bool IsSure(WrittenPlan farm, NamedSession session, NamedAnimal animal, ToFindOut asked, LocalDate day)
    {
        if (day.PlusDays(asked.Record.ResultsAfter) > animal.Start)
        {
            return false;
        }

        var records = animal.ToFindOut.Select(one => one == asked ? one.Record with { Date = day } : one.Record).ToList();
        var rulebook = session.Session.Rulebook;
        var text = "date,animal,kind,value,unit\n" + string.Concat(farm.Events.Where((_, i) => records.All(record => record.WithoutLine != i + 2)).Select(row => row + "\n"));
        var animals = "animal,born,sex\n" + string.Concat(Enumerable.Range(1, farm.Cows).Select(cow => $"{cow},2020-05-01,F\n"));
        var judge = new SupposedFarm(rulebook, ("animals.csv", Encoding.UTF8.GetBytes(animals)), ("events.csv", Encoding.UTF8.GetBytes(text))).Judge(new Supposition
        {
            Records = new Supposed { Rows = [.. records.Where(record => record.Value.Length > 0).Select(record => new SupposedRow(record.Date, animal.Number, record.Kind.Name, record.Value, record.Unit) { Details = record.Details })] },
        });
        var programme = session.Session.Programme;
        return judge.JudgeOne(ProgrammeLists.Treatment(programme)!, animal.Animal, animal.Start).Answer.MayBeUsed() && judge.JudgeOne(ProgrammeLists.Recipients(programme)!, animal.Animal).Answer.MayBeUsed();
    }
}
