using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Plans;

namespace Byrelaw.Language.Binding.Plans;

/// <summary>What may be assumed, by the words in which it is said.</summary>
internal static class QuantityTable
{
    /// <summary>Numbers and shares, longest words first.</summary>
    public static readonly IReadOnlyList<(string Words, Quantity Quantity)> Quantities = Sorted<Quantity>(
        ("oocytes per collection", Quantity.OocytesPerCollection),
        ("embryos per flush", Quantity.EmbryosPerFlush),
        ("embryos per oocyte", Quantity.EmbryosPerOocyte),
        ("embryos fit to freeze", Quantity.EmbryosFitToFreeze),
        ("recipients cycling", Quantity.RecipientsCycling),
        ("pregnant per transfer", Quantity.PregnantPerTransfer),
        ("kept from first to second check", Quantity.KeptFromFirstToSecondCheck),
        ("kept from second check to calving", Quantity.KeptFromSecondCheckToCalving),
        ("kept from first check to calving", Quantity.KeptFromFirstCheckToCalving),
        ("alive at a day old", Quantity.AliveAtADayOld),
        ("heifer per calf", Quantity.HeiferPerCalf),
        ("gestation", Quantity.Gestation),
        ("days of keep per recipient", Quantity.DaysOfKeepPerRecipient));

    /// <summary>Prices, longest words first.</summary>
    public static readonly IReadOnlyList<(string Words, CostUnit Per)> Costs = Sorted<CostUnit>(
        ("cost per programme", CostUnit.Programme),
        ("cost per collection", CostUnit.Collection),
        ("cost per embryo", CostUnit.Embryo),
        ("cost per embryo frozen", CostUnit.EmbryoFrozen),
        ("cost per transfer", CostUnit.Transfer),
        ("cost per embryo transferred", CostUnit.EmbryoTransferred),
        ("cost per animal treated", CostUnit.AnimalTreated),
        ("cost per sample", CostUnit.Sample),
        ("cost per visit", CostUnit.Visit),
        ("cost per day of keep", CostUnit.DayOfKeep),
        ("cost per pregnancy", CostUnit.Pregnancy),
        ("cost per lost cycle", CostUnit.LostCycle));

    /// <summary>Whether a quantity is a number with a spread; else it is a share.</summary>
    public static bool IsNumber(Quantity quantity) => quantity
        is Quantity.OocytesPerCollection or Quantity.EmbryosPerFlush or Quantity.Gestation or Quantity.DaysOfKeepPerRecipient;

    /// <summary>Words of a quantity.</summary>
    public static string Words(Quantity quantity) => Quantities.First(entry => entry.Quantity == quantity).Words;

    /// <summary>Words of a price.</summary>
    public static string Words(CostUnit per) => Costs.First(entry => entry.Per == per).Words;

    /// <summary>The cases that a quantity is said for, as canonical text writes them after its words.</summary>
    public static string Cases(Assumption one) => string.Concat(
        one.Breed is null ? "" : $" of {one.Breed}",
        one.State switch { EmbryoState.Fresh => " fresh", EmbryoState.Frozen => " frozen", _ => "" },
        one.In switch { Audience.Cows => " in cows", Audience.Heifers => " in heifers", _ => "" },
        one.WithSexedSemen ? " with sexed semen" : "");

    private static List<(string Words, T Value)> Sorted<T>(params (string Words, T Value)[] entries) => [.. entries.OrderByDescending(entry => entry.Words.Length)];
}
