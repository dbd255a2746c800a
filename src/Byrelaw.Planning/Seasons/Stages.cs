namespace Byrelaw.Planning.Seasons;

/// <summary>Which assumption leads to which stage.</summary>
internal static class Stages
{
    /// <summary>The steps after a transfer; what is kept to calving is one step or two, as the file says it.</summary>
    public static IEnumerable<(Stage Stage, AssumedQuantity Quantity)> AfterTransfer(PlanStatements plans)
    {
        yield return (Stage.Pregnant, AssumedQuantity.PregnantPerTransfer);
        if (plans.Assumptions.Any(one => one.Quantity is AssumedQuantity.KeptFromFirstToSecondCheck or AssumedQuantity.KeptFromSecondCheckToCalving))
        {
            yield return (Stage.Kept, AssumedQuantity.KeptFromFirstToSecondCheck);
            yield return (Stage.Calvings, AssumedQuantity.KeptFromSecondCheckToCalving);
        }
        else
        {
            yield return (Stage.Calvings, AssumedQuantity.KeptFromFirstCheckToCalving);
        }

        yield return (Stage.Alive, AssumedQuantity.AliveAtADayOld);
        yield return (Stage.Heifers, AssumedQuantity.HeiferPerCalf);
    }

    /// <summary>The stage at which an outcome is counted.</summary>
    public static Stage Of(Outcome outcome) => outcome switch
    {
        Outcome.EmbryosTransferred => Stage.Transfers,
        Outcome.Pregnancies => Stage.Pregnant,
        Outcome.LiveCalves => Stage.Alive,
        _ => Stage.Heifers,
    };
}
