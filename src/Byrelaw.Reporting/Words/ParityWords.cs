using Byrelaw.Records.Doubts;

namespace Byrelaw.Reporting.Words;

/// <summary>A parity that is higher than the calvings on record, in words.</summary>
internal static class ParityWords
{
    /// <summary>The animals of one doubt.</summary>
    public static SaidDoubt Of(ParityTooHigh doubt, Herd herd)
    {
        var isOne = doubt.Animals.Length == 1;
        var counted = ParityAgainstCalvings.CountedByItsDay(herd, doubt.Animals[0]);
        var lead = isOne
            ? $"Parity {herd.RecordedParity[doubt.Animals[0]]}, but {(counted == 0 ? "no calving" : Numbers.Count(counted, "calving", "calvings"))} on record, though all calvings are promised"
            : $"{doubt.Animals.Length} animals have a higher parity than calvings on record, though all calvings are promised";
        return new SaidDoubt("parity_too_high", lead,
            isOne ? "One of the two is wrong: calvings are not known of her on any day, and her parity may be either or between."
                : "Of each, one of the two is wrong: calvings are not known of them on any day, and the parity may be either or between.",
            $"Write down the {(isOne ? "missing " + (herd.RecordedParity[doubt.Animals[0]] - counted == 1 ? "calving" : "calvings") : "missing calvings")}, or put the parity right.")
        {
            Rows = [.. doubt.Animals.Select(animal => DoubtRow.Of(animal, Day.Start, 0, herd))],
        };
    }
}
