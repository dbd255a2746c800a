using Byrelaw.Planning.Forecasting;

namespace Byrelaw.Reporting.Words;

/// <summary>The words of a plan: stages, steps, prices.</summary>
public static class PlanWords
{
    /// <summary>What is counted at a stage.</summary>
    public static string Of(Stage stage, EmbryoOrigin origin) => stage switch
    {
        Stage.Collections => origin switch { EmbryoOrigin.Frozen => "straws thawed", EmbryoOrigin.Flushed => "flushes (donors times sessions)", _ => "collections (donors times sessions)" },
        Stage.Oocytes => "eggs collected",
        Stage.Embryos => "embryos fit to transfer",
        Stage.Recipients => "recipients accepted on the day",
        Stage.Transfers => "embryos transferred",
        Stage.Pregnant => "pregnant at the first check",
        Stage.Kept => "still pregnant at the second check",
        Stage.Calvings => "calvings",
        Stage.Alive => "calves alive at a day old",
        _ => "heifer calves alive",
    };

    /// <summary>One word or two under a chart.</summary>
    public static string Short(Stage stage) => stage switch
    {
        Stage.Collections => "collections",
        Stage.Oocytes => "eggs",
        Stage.Embryos => "embryos",
        Stage.Recipients => "recipients",
        Stage.Transfers => "transfers",
        Stage.Pregnant => "pregnant",
        Stage.Kept => "2nd check",
        Stage.Calvings => "calvings",
        Stage.Alive => "alive",
        _ => "heifers",
    };

    /// <summary>What a programme wants, for so many of it.</summary>
    public static string Of(Outcome outcome, int count) => outcome switch
    {
        Outcome.LiveHeiferCalves => Numbers.Count(count, "live heifer calf", "live heifer calves"),
        Outcome.LiveCalves => Numbers.Count(count, "live calf", "live calves"),
        Outcome.Pregnancies => Numbers.Count(count, "pregnancy", "pregnancies"),
        _ => Numbers.Count(count, "embryo transferred", "embryos transferred"),
    };

    /// <summary>A step on the way to being used, with what it is a share of.</summary>
    public static (string Step, string Of) Of(UseStep step, bool isNatural, bool seenBefore) => step switch
    {
        UseStep.Cycling => ("cycling", "of those watched"),
        UseStep.InHeat => ("in heat", "of those treated"),
        UseStep.InTheWindow => ("on a day that serves", isNatural ? "of those cycling" : "of those in heat"),
        UseStep.Seen => ("seen in heat", "of those in heat on such a day"),
        _ => ("accepted on the day", seenBefore ? "of those seen" : "of those treated"),
    };

    /// <summary>What there can be more of: one, and several.</summary>
    public static (string One, string Many) Of(Further further, EmbryoOrigin origin) => further switch
    {
        Further.Session => ("session", "sessions"),
        Further.Donor => origin == EmbryoOrigin.Frozen ? ("straw at every session", "straws at every session") : ("donor at every session", "donors at every session"),
        Further.Recipient => ("recipient treated at every session", "recipients treated at every session"),
        _ => ("donor at every session, with recipients to match", "donors at every session, with recipients to match"),
    };

    /// <summary>A charge, named by what it is paid for.</summary>
    public static string Of(Charge charge) => charge switch
    {
        { Per: CostUnit.AnimalTreated, For: { } method } => $"treating by {method}",
        { For: { } task } => task,
        _ => Of(charge.Per),
    };

    /// <summary>Something without a price, named as its charge would be.</summary>
    public static string Of(NotPriced what) => what is { Per: CostUnit.AnimalTreated, For: { } method } ? $"treating by {method}" : Of(what.Per);

    /// <summary>Where in the programme money is spent.</summary>
    public static string Of(SpentOn on) => on switch
    {
        SpentOn.TheProgramme => "the programme",
        SpentOn.GettingReady => "getting ready",
        SpentOn.Embryos => "embryos",
        SpentOn.Transfers => "transfers",
        _ => "pregnancies",
    };

    /// <summary>What a price is paid for, one of it.</summary>
    public static string Each(CostUnit per) => per switch
    {
        CostUnit.Programme => "once",
        CostUnit.Collection => "each donor and session",
        CostUnit.Embryo => "each embryo fit to transfer",
        CostUnit.EmbryoFrozen => "each embryo frozen",
        CostUnit.Transfer or CostUnit.EmbryoTransferred => "each embryo transferred",
        CostUnit.AnimalTreated => "each animal treated",
        CostUnit.Sample => "each sample",
        CostUnit.Visit => "each visit",
        CostUnit.DayOfKeep => "each recipient and day",
        CostUnit.Pregnancy => "each pregnancy",
        _ => "each cycle lost",
    };

    /// <summary>What has to be assumed to go on, as the rule files name it.</summary>
    public static string Of(AssumedQuantity quantity) => quantity switch
    {
        AssumedQuantity.OocytesPerCollection => "oocytes per collection",
        AssumedQuantity.EmbryosPerFlush => "embryos per flush",
        AssumedQuantity.EmbryosPerOocyte => "embryos per oocyte",
        AssumedQuantity.EmbryosFitToFreeze => "embryos fit to freeze",
        AssumedQuantity.RecipientsCycling => "recipients cycling",
        AssumedQuantity.AskedAndUsable => "asked and usable",
        AssumedQuantity.PregnantPerTransfer => "pregnant per transfer",
        AssumedQuantity.KeptFromFirstCheckToCalving => "kept from first check to calving",
        AssumedQuantity.AliveAtADayOld => "alive at a day old",
        AssumedQuantity.HeiferPerCalf => "heifer per calf",
        AssumedQuantity.Gestation => "gestation",
        AssumedQuantity.DaysOfKeepPerRecipient => "days of keep per recipient",
        _ => "kept to the second check and to calving",
    };

    private static string Of(CostUnit per) => per switch
    {
        CostUnit.Programme => "the programme as a whole",
        CostUnit.Collection => "collecting or flushing",
        CostUnit.Embryo => "making embryos",
        CostUnit.EmbryoFrozen => "freezing embryos",
        CostUnit.Transfer => "transferring",
        CostUnit.EmbryoTransferred => "embryos transferred, all in",
        CostUnit.AnimalTreated => "treating",
        CostUnit.Sample => "samples at the laboratory",
        CostUnit.Visit => "the team's visits",
        CostUnit.DayOfKeep => "keeping recipients",
        CostUnit.Pregnancy => "pregnancies",
        _ => "cycles lost",
    };
}
