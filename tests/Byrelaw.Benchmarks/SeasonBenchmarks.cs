using Byrelaw.Language.Rulebooks.Plans;
using Byrelaw.Planning.Carrying;
using Byrelaw.Planning.Forecasting;
using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Recipients;
using Byrelaw.Planning.Seasons;
using NodaTime;

namespace Byrelaw.Benchmarks;

/// <summary>
/// A season's numbers for a large farm that says what it wants: three sessions that differ, two methods, those named and if all asked pass,
/// with prices for everything. 160 donors and 400 females are to take less than a second, 656 donors and 1,640 females less than five.
/// </summary>
[ShortRunJob]
public class SeasonBenchmarks
{
    private SeasonInputs _inputs = null!;

    /// <summary>Donors at each session.</summary>
    [Params(160, 656)]
    public int Donors { get; set; } = 160;

    [GlobalSetup]
    public void SetUp()
    {
        _inputs = Farm(Donors);
        if (Numbers() is not { Forecast.Chance: > 0 and < 1, IfAllPass.Chance: > 0, Budget: not null, Needed.Length: 4 })
        {
            throw new InvalidOperationException("Not all of the season's numbers were worked out.");
        }
    }

    [Benchmark]
    public SeasonNumbers Numbers() => SeasonPlanner.Plan(_inputs);

    private static SeasonInputs Farm(int donors)
    {
        var females = donors * 5 / 2;
        var (insert, once) = (Treatment("Insert", 60, 0.95), Treatment("Prostaglandin once", 10, 0.7));
        return new()
        {
            Plans = new PlanStatements
            {
                Methods = [insert, once],
                Assumptions =
                [
                    Number(AssumedQuantity.OocytesPerCollection, 9, 6), Share(AssumedQuantity.EmbryosPerOocyte, 0.22, 50), Share(AssumedQuantity.PregnantPerTransfer, 0.45, 80),
                    Share(AssumedQuantity.KeptFromFirstCheckToCalving, 0.81, 40), Share(AssumedQuantity.AliveAtADayOld, 0.95, null), Share(AssumedQuantity.HeiferPerCalf, 0.47, null),
                ],
                Costs = [Cost(CostUnit.Collection, 350), Cost(CostUnit.Embryo, 90), Cost(CostUnit.Transfer, 45), Cost(CostUnit.Visit, 400), Cost(CostUnit.Pregnancy, 20)],
            },
            Aims = new Aims { Wants = new(donors * 3 / 5, Outcome.LiveHeiferCalves, 0.8, default), Budget = new(donors * 2_500, "NZD") },
            Donors = donors,
            MostDonors = donors + 20,
            Sessions = 3,
            MostSessions = 4,
            Uses = [UseChain.OfTreatment(insert, day => day is 3 or 4 or 9), UseChain.OfTreatment(once, day => day is 3 or 4)],
            Animals = females,
            Visits = 6,
            Named = ByName(donors * 9 / 10, females * 8 / 10),
            IfAllPass = ByName(donors, females),
        };
    }

    private static SessionsByName ByName(int donors, int females) =>
        new([.. Enumerable.Range(0, 3).Select(session => new SessionSize(donors, [new(new("Insert", new(0.9, 25)), (females / 6) + session), new(new("Prostaglandin once", new(0.55, 15)), (females / 6) - session)]))], CarrierShares.Exactly(0.4));

    private static Method Treatment(string name, double cost, double inHeat) => new()
    {
        Name = name,
        Cost = new(cost, "NZD"),
        InHeat = new(new(inHeat, 30, null, default), [(3, 0.4), (4, 0.4), (9, 0.2)]),
        Span = default,
    };

    private static Assumption Share(AssumedQuantity quantity, double share, double? weight) => new() { Quantity = quantity, Share = new(share, weight, null, default), Span = default };

    private static Assumption Number(AssumedQuantity quantity, double mean, double spread) => new() { Quantity = quantity, Mean = mean, Spread = spread, Span = default };

    private static CostLine Cost(CostUnit per, double amount) => new(per, null, new(amount, "NZD"), null, null, null, default);
}
