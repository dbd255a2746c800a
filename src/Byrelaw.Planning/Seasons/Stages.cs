using Byrelaw.Language.Rulebooks.Plans;
using Byrelaw.Planning.Forecasting;

namespace Byrelaw.Planning.Seasons;

/// <summary>Which assumption leads to which stage.</summary>
internal static class Stages
{
    /// <summary>The steps after a transfer; what is kept to calving is one step or two, as the file says it.</summary>
    public static IEnumerable<(Stage Stage, Quantity Quantity)> AfterTransfer(PlanStatements plans)
    {
        yield return (Stage.Pregnant, Quantity.PregnantPerTransfer);
        if (plans.Assumptions.Any(one => one.Quantity is Quantity.KeptFromFirstToSecondCheck or Quantity.KeptFromSecondCheckToCalving))
        {
            yield return (Stage.Kept, Quantity.KeptFromFirstToSecondCheck);
            yield return (Stage.Calvings, Quantity.KeptFromSecondCheckToCalving);
        }
        else
        {
            yield return (Stage.Calvings, Quantity.KeptFromFirstCheckToCalving);
        }

        yield return (Stage.Alive, Quantity.AliveAtADayOld);
        yield return (Stage.Heifers, Quantity.HeiferPerCalf);
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
