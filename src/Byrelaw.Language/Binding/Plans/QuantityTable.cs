namespace Byrelaw.Language.Binding.Plans;

/// <summary>What may be assumed, by the words in which it is said.</summary>
internal static class QuantityTable
{
    /// <summary>Numbers and shares, longest words first.</summary>
    public static readonly IReadOnlyList<(string Words, AssumedQuantity Quantity)> Quantities = Sorted<AssumedQuantity>(
        ("oocytes per collection", AssumedQuantity.OocytesPerCollection),
        ("embryos per flush", AssumedQuantity.EmbryosPerFlush),
        ("embryos per oocyte", AssumedQuantity.EmbryosPerOocyte),
        ("embryos fit to freeze", AssumedQuantity.EmbryosFitToFreeze),
        ("recipients cycling", AssumedQuantity.RecipientsCycling),
        ("pregnant per transfer", AssumedQuantity.PregnantPerTransfer),
        ("kept from first to second check", AssumedQuantity.KeptFromFirstToSecondCheck),
        ("kept from second check to calving", AssumedQuantity.KeptFromSecondCheckToCalving),
        ("kept from first check to calving", AssumedQuantity.KeptFromFirstCheckToCalving),
        ("alive at a day old", AssumedQuantity.AliveAtADayOld),
        ("heifer per calf", AssumedQuantity.HeiferPerCalf),
        ("gestation", AssumedQuantity.Gestation),
        ("days of keep per recipient", AssumedQuantity.DaysOfKeepPerRecipient),
        ("asked and usable", AssumedQuantity.AskedAndUsable));

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
    public static bool IsNumber(AssumedQuantity quantity) => quantity
        is AssumedQuantity.OocytesPerCollection or AssumedQuantity.EmbryosPerFlush or AssumedQuantity.Gestation or AssumedQuantity.DaysOfKeepPerRecipient;

    /// <summary>Whether one donor may have a line of her own.</summary>
    public static bool IsOfADonor(AssumedQuantity quantity) =>
        quantity is AssumedQuantity.OocytesPerCollection or AssumedQuantity.EmbryosPerFlush or AssumedQuantity.EmbryosPerOocyte;

    /// <summary>Whether dry cows may have a line of their own: what becomes of a transfer. How long they carry goes by the calf.</summary>
    public static bool IsToldOfDryCows(AssumedQuantity quantity) => quantity is AssumedQuantity.PregnantPerTransfer or AssumedQuantity.KeptFromFirstToSecondCheck
        or AssumedQuantity.KeptFromSecondCheckToCalving or AssumedQuantity.KeptFromFirstCheckToCalving or AssumedQuantity.AliveAtADayOld;

    /// <summary>Words of a quantity.</summary>
    public static string Words(AssumedQuantity quantity) => Quantities.First(entry => entry.Quantity == quantity).Words;

    /// <summary>Words of a price.</summary>
    public static string Words(CostUnit per) => Costs.First(entry => entry.Per == per).Words;

    /// <summary>The cases that a quantity is said for, as canonical text writes them after its words.</summary>
    public static string Cases(Assumption one) => string.Concat(
        one.Breed is null ? "" : $" of {one.Breed}",
        one.State switch { EmbryoState.Fresh => " fresh", EmbryoState.Frozen => " frozen", _ => "" },
        one.In switch { Carrier.Cows => " in cows", Carrier.DryCows => " in dry cows", Carrier.Heifers => " in heifers", _ => "" },
        one.WithSexedSemen ? " with sexed semen" : "",
        one.Donor is null ? "" : $" of {NameText.Text(one.Donor)}");

    private static List<(string Words, T Value)> Sorted<T>(params (string Words, T Value)[] entries) => [.. entries.OrderByDescending(entry => entry.Words.Length)];
}
