using Byrelaw.Judging;
using Byrelaw.Judging.Truths;
using Byrelaw.Planning.Naming;

namespace Byrelaw.Planning.Tests.Carrying;

/// <summary>Which cows are dry, and the sorts of recipients side by side.</summary>
public sealed class WhoCarriesTests
{
    // Cow 1 in milk, cow 2 dried off since she calved, cow 3 dried off and calved since, cow 4 came dry; cow 5 came in milk, cow 6 came dry and calved since;
    // cows 7 and 8 are donors.
    private static readonly WrittenPlan Farm = new()
    {
        Cows = 8,
        Programme = "collection on 2026-09-07, 2 times every 14 days\ntransfer 8 days after collection, over 2 days\ndate first treatment 8 days before collection\nprepare 4 recipients by \"Progesterone insert\"\nwants 3 live calves, 80% sure",
        Lists = "\n  choose donors from \"7\", \"8\", judged on collection\n  choose treatment from females, judged on first treatment\n  choose recipients from females, judged from first transfer to final transfer\n",
        More = """
            add to purchase  with state is one of dry, milking
            assume embryos per flush 8, spread 4
              source "invented"
            assume oocytes per collection 10, spread 5
              source "invented"
            assume embryos per oocyte 25%, weight 50
            assume pregnant per transfer 45%, weight 40
            assume pregnant per transfer in dry cows 38%, weight 20
            assume kept from first check to calving 80%, weight 40
            assume alive at a day old 95%, weight 40
            assume cost per embryo transferred 400 NZD
            assume cost per animal treated by "Progesterone insert" 50 NZD

            """,
        Columns = "date,animal,kind,value,unit,state",
        Events =
        [
            .. Enumerable.Range(1, 6).SelectMany(cow => new[] { $"{(cow is 4 or 5 ? 2024 : 2026)}-05-01,{cow},calving,,,", $"2026-08-01,{cow},serum copper,20,umol/L," }),
            "2026-07-20,2,drying off,,,", "2026-04-01,3,drying off,,,",
            "2026-07-10,4,purchase,,,dry", "2026-07-10,5,purchase,,,milking", "2026-04-10,6,purchase,,,dry",
        ],
    };

    [Fact]
    public void A_dry_cow_is_one_dried_off_since_her_last_calving_or_bought_dry()
    {
        var rulebook = Farm.Rulebook;
        var judge = new Judge(rulebook, Farm.Herd(rulebook));
        var dry = DryCows.On(judge, new(2026, 9, 15));
        Enumerable.Range(0, 6).Select(dry.Of).ShouldBe([Truth.False, Truth.True, Truth.False, Truth.True, Truth.False, Truth.False]);
        var before = DryCows.On(judge, new(2026, 4, 20));
        before.Of(2).ShouldBe(Truth.True);
    }

    [Fact]
    public void Whether_she_is_dry_is_not_known_where_drying_off_is_not_promised()
    {
        var farm = Farm with { Keeping = "calving" };
        var rulebook = farm.Rulebook;
        var dry = DryCows.On(new Judge(rulebook, farm.Herd(rulebook)), new(2026, 9, 15));
        Enumerable.Range(0, 3).Select(dry.Of).ShouldBe([Truth.Unknown, Truth.True, Truth.Unknown]);
    }

    [Fact]
    public void Each_sort_stands_with_its_number_its_rate_its_cost_and_what_more_of_it_would_bring()
    {
        var rulebook = Farm.Rulebook;
        var plan = Planner.Plan(rulebook, Farm.Herd(rulebook), new(2026, 8, 1));
        var named = plan.Sessions.SelectMany(session => session.Methods[0].Animals.Select((animal, place) => (animal.Standing, place))).Where(one => one.Standing == Standing.Sure).Select(one => one.place).Distinct().ToList();
        var (cows, dry, heifers) = (plan.WhoCarries!.Sorts[0], plan.WhoCarries.Sorts[1], plan.WhoCarries.Sorts[2]);
        (cows.Sure + dry.Sure + heifers.Sure).ShouldBe(named.Count);
        heifers.Sure.ShouldBe(0);
        dry.Sure.ShouldBe(named.Count(place => place is 1 or 3));
        (cows.Pregnant!.Share!.Value, dry.Pregnant!.Share!.Value, heifers.Pregnant!.Share!.Value).ShouldBe((0.45, 0.38, 0.45));

        // By hand, (E + T + (S + K) / u) / p: 400 all in, 50 for each of those treated; every one that a timed insert is given to is used where nothing else is said.
        var used = plan.SideBySide.Single(method => method.Method.Name == "Progesterone insert").Used.Share;
        cows.CostPerLiveCalf!.Value.ShouldBe((400 + (50 / used)) / (0.45 * 0.8 * 0.95), 1e-9);
        dry.CostPerLiveCalf!.Value.ShouldBe((400 + (50 / used)) / (0.38 * 0.8 * 0.95), 1e-9);
        plan.WhoCarries.Method.ShouldBe("Progesterone insert");

        cows.Bought!.Animals.ShouldBe(dry.Bought!.Animals);
        cows.Bought.Animals.ShouldBe(plan.Sessions.Sum(session => session.Wanted!.Value - session.Named.Length - session.ToAsk.Length));
        cows.Bought.Fills.ShouldBeTrue();
        cows.Bought.More.ShouldBeGreaterThan(dry.Bought.More);
    }
}
