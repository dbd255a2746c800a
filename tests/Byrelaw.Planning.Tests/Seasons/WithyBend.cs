namespace Byrelaw.Planning.Tests.Seasons;

/// <summary>An invented farm's programme, as its file would give it.</summary>
internal static class WithyBend
{
    public static readonly PlanStatements Plans = new()
    {
        Methods = [Methods.Insert with { Cost = Nzd(55) }, Methods.ProstaglandinOnce with { Cost = Nzd(9) }, Methods.NaturalHeat],
        Assumptions =
        [
            Number(AssumedQuantity.OocytesPerCollection, 9, 6),
            Share(AssumedQuantity.EmbryosPerOocyte, Methods.Share(0.22, 50)),
            Share(AssumedQuantity.PregnantPerTransfer, Methods.Counted(36, 80)),
            Share(AssumedQuantity.KeptFromFirstCheckToCalving, Methods.Share(0.81, 40)),
            Share(AssumedQuantity.AliveAtADayOld, Methods.Share(0.95)),
            Share(AssumedQuantity.HeiferPerCalf, Methods.Share(0.47)),
        ],
        Costs = [Cost(CostUnit.Collection, 350), Cost(CostUnit.Embryo, 90), Cost(CostUnit.Transfer, 45), Cost(CostUnit.Visit, 400)],
    };

    public static readonly Aims Hopes = new()
    {
        Wants = new(6, Outcome.LiveHeiferCalves, 0.8, default),
        Budget = Nzd(30000),
    };

    public static readonly SeasonInputs Inputs = new()
    {
        Plans = Plans,
        Aims = Hopes,
        Donors = 5,
        MostDonors = 8,
        Sessions = 4,
        MostSessions = 6,
        Uses = [UseChain.OfTreatment(Methods.Insert, day => day == 9), UseChain.OfTreatment(Methods.ProstaglandinOnce, day => day is 3 or 4), UseChain.OfNaturalHeat(Methods.NaturalHeat, 4, null)],
        Animals = 41,
        Visits = 8,
    };

    public static Money Nzd(double amount) => new(amount, "NZD");

    public static CostLine Cost(CostUnit per, double amount) => new(per, null, Nzd(amount), null, null, null, default);

    public static Assumption Share(AssumedQuantity quantity, Share share) => new() { Quantity = quantity, Share = share, Span = default };

    public static Assumption Number(AssumedQuantity quantity, double mean, double? spread) => new() { Quantity = quantity, Mean = mean, Spread = spread, Span = default };

    public static PlanStatements With(params ImmutableArray<Assumption> more) => Plans with { Assumptions = [.. Plans.Assumptions, .. more] };
}
