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
    private const string WithMobs = "calving, mastitis, sale, purchase, mating, transfer, drying off, bull in, bull out, pregnancy test, mob";

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
          settles serum copper
          because "b"

        """;

    private const string OfTheMob = """
        measure liver copper  in umol/kg
        rules for recipients
        rule "Copper of the mob"
          needs average liver copper of her mob in the last 90 days, from at least 2 animals, at least 95 umol/kg
          because "b"
        task "Liver"
          for recipients
          results take 10 days
          settles liver copper
          because "b"

        """;

    /// <summary>Cows of one mob, calved and with copper in their own blood.</summary>
    private static IEnumerable<string> InHill(params IEnumerable<int> cows) =>
        cows.SelectMany(cow => new[] { $"2026-05-01,{cow},mob,Hill,", $"2026-05-01,{cow},calving,,", $"2026-08-01,{cow},serum copper,20,umol/L" });

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

    [Theory]
    [InlineData(3, 17)]
    [InlineData(60, 20)]
    public void The_farms_own_due_narrows_the_days_and_where_it_leaves_none_those_of_the_rules_stay(int before, int last)
    {
        // Day 0 is 30 August, and results take 10 days: due 3 days before, they are taken by the 17th; due 60 days before is past, and a sample counts all the same.
        var task = Scanned.Replace("results take 10 days", $"results take 10 days\n  due {before} days before first treatment", StringComparison.Ordinal);
        var asked = Named(Farm("2026-05-01,1,calving,,") with { More = task })[0].ToAsk.Single(animal => animal.Number == "1");
        asked.ToFindOut.ShouldHaveSingleItem().Days.ShouldHaveSingleItem().ShouldBe(new DateInterval(new(2026, 8, 1), new(2026, 8, last)));
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

    [Fact]
    public void What_settles_a_mob_of_which_a_result_is_awaited_is_that_result_and_no_new_one_of_somebody_else()
    {
        var farm = Farm([.. InHill(1, 2, 3), "2026-07-20,1,liver copper,100,umol/kg", "2026-07-20,2,liver copper,pending,"]) with { More = OfTheMob, Keeping = WithMobs };
        foreach (var animal in Named(farm).SelectMany(session => session.ToAsk))
        {
            var record = animal.ToFindOut.ShouldHaveSingleItem().Record;
            (record.Whose, record.Of.ShouldHaveSingleItem(), record.WithoutLine, record.IsTaken).ShouldBe((animal.Number == "2" ? "" : "2", "2", farm.Events.Length + 1, false));
        }

        Named(farm)[0].ToAsk.Length.ShouldBe(2);
        var another = farm with { Events = [.. farm.Events, "2026-08-01,3,liver copper,200,umol/kg"] };
        Named(another).ShouldAllBe(session => session.Named.IsEmpty);
        var result = farm with { Events = [.. farm.Events.RemoveAt(farm.Events.Length - 1), "2026-07-20,2,liver copper,100,umol/kg"] };
        Named(result)[0].Named.Length.ShouldBe(2);
    }

    [Fact]
    public void Who_is_named_waits_for_a_sample_of_her_mob_and_it_is_taken_on_days_on_which_it_is_back_in_time_for_her()
    {
        // 3 came to the mob late, so two samples are missing of hers. The two others are treated on 30 August and carry on 15 and 16 September; a result takes 10 days.
        var rows = InHill(1, 2, 3).Concat(["2026-07-20,1,liver copper,100,umol/kg", "2026-07-20,2,liver copper,100,umol/kg", "2026-07-25,3,mob,Hill,"]).Where(row => row != "2026-05-01,3,mob,Hill,");
        var sessions = Named(Farm([.. rows]) with { More = OfTheMob, Keeping = WithMobs });
        sessions[0].Named.Select(animal => animal.Number).ShouldBe(["1", "2"]);
        var asked = sessions[1].ToAsk.ShouldHaveSingleItem().ToFindOut.ShouldHaveSingleItem();
        asked.Days.ShouldBe([new(new(2026, 8, 1), new(2026, 8, 20)), new(new(2026, 8, 31), new(2026, 9, 3))]);
        var waiting = asked.Waiting.ShouldHaveSingleItem();
        (waiting.Session, string.Join(' ', waiting.Numbers), waiting.BackInTime).ShouldBe((1, "1 2", true));
    }

    /// <summary>Each day that is told, supposed, does it, and the day before and the day after do not: judged anew from the files, with all promises held against them again.</summary>
    [Fact]
    public void Each_day_does_it_and_the_day_before_and_after_do_not() => Gen.Select(Rows, Gen.Bool).Hold((rows, scanned) => DoOnTheirDaysAndNoOthers(Farm() with { Events = rows, More = scanned ? Scanned : "" }), count: 8);

    /// <summary>The same of a mob, some of whose results are awaited: whoever shares it must not be proved by what is asked of another.</summary>
    [Fact]
    public void So_it_is_of_samples_of_a_mob() => MobRows.Hold(rows => DoOnTheirDaysAndNoOthers(Farm() with { Events = rows, More = OfTheMob, Keeping = WithMobs }), count: 4);

    private static Gen<ImmutableArray<string>> MobRows => Gen.Select(Gen.Int[1, 4].Array[2, 4], Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], Gen.Int[0, 2].Select(one => new[] { "pending,", "80,umol/kg", "120,umol/kg" }[one])).Array[1, 4], Gen.Int[1, 4].Array[0, 2], (cows, samples, late) =>
        InHill(cows.Distinct()).Concat(samples.Select(sample => $"2026-07-{sample.Item2},{sample.Item1},liver copper,{sample.Item3}")).Concat(late.Select(cow => $"2026-07-25,{cow},mob,Hill,")).Distinct().Order().ToImmutableArray());

    private static void DoOnTheirDaysAndNoOthers(WrittenPlan farm)
    {
        foreach (var session in Named(farm))
        {
            foreach (var animal in session.ToAsk)
            {
                IsSure(farm, session, animal, null, Today).ShouldBeTrue($"{animal.Number}: {string.Join("; ", animal.ToFindOut.Select(one => one.Record))}");
                foreach (var one in animal.ToFindOut)
                {
                    foreach (var run in one.Days)
                    {
                        run.ShouldAllBe(day => IsSure(farm, session, animal, one, day));
                        IsSure(farm, session, animal, one, run.End.PlusDays(1)).ShouldBe(one.Days.Any(other => other.Contains(run.End.PlusDays(1))) || IsLeftOutForOthers(one));
                        if (run.Start > Today)
                        {
                            IsSure(farm, session, animal, one, run.Start.PlusDays(-1)).ShouldBe(one.Days.Any(other => other.Contains(run.Start.PlusDays(-1))) || IsLeftOutForOthers(one));
                        }
                    }
                }
            }
        }
    }

    /// <summary>Days that do for her and on which others would wait too long.</summary>
    private static bool IsLeftOutForOthers(ToFindOut one) => !one.Waiting.IsEmpty;

    private static Gen<ImmutableArray<string>> Rows => Gen.OneOf(
        Gen.Int[1, 4].Select(cow => $"2026-05-01,{cow},calving,,"),
        Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], (cow, day) => $"2026-07-{day},{cow},mating,,"),
        Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], (cow, day) => $"2026-07-{day},{cow},serum copper,,"),
        Gen.Select(Gen.Int[1, 4], Gen.Int[10, 29], (cow, day) => $"2026-06-{day},{cow},serum copper,20,umol/L")).Array[3, 9].Select(rows => rows.Order().ToImmutableArray());

    /// <summary>Whether a result that is in hand on day 0, with all else that is asked, makes her sure of the session.</summary>
    private static bool IsSure(WrittenPlan farm, NamedSession session, NamedAnimal animal, ToFindOut? asked, LocalDate day)
    {
        if (asked is not null && day.PlusDays(asked.Record.ResultsAfter) > animal.Start)
        {
            return false;
        }

        var records = animal.ToFindOut.Select(one => one == asked ? one.Record with { Date = day } : one.Record).ToList();
        var rulebook = session.Session.Rulebook;
        var text = "date,animal,kind,value,unit\n" + string.Concat(farm.Events.Where((_, i) => records.All(record => record.WithoutLine != i + 2)).Select(row => row + "\n"));
        var animals = "animal,born,sex\n" + string.Concat(Enumerable.Range(1, farm.Cows).Select(cow => $"{cow},2020-05-01,F\n"));
        var judge = new SupposedFarm(rulebook, ("animals.csv", Encoding.UTF8.GetBytes(animals)), ("events.csv", Encoding.UTF8.GetBytes(text))).Judge(new Supposition
        {
            Records = new Supposed
            {
                Rows = [.. records.Where(record => record.Value.Length > 0).SelectMany(record => record.Of.Select(number => (record, number))).DistinctBy(one => (one.number, one.record.Kind.Name, one.record.Date))
                .Select(one => new SupposedRow(one.record.Date, one.number, one.record.Kind.Name, one.record.Value, one.record.Unit) { Details = one.record.Details })]
            },
        });
        var programme = session.Session.Programme;
        return judge.JudgeOne(ProgrammeLists.Treatment(programme)!, animal.Animal, animal.Start).Answer.MayBeUsed() && judge.JudgeOne(ProgrammeLists.Recipients(programme)!, animal.Animal).Answer.MayBeUsed();
    }
}
