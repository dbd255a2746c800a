namespace Byrelaw.Records.Doubts;

/// <summary>A parity on record that the calvings on record speak against.</summary>
public static class ParityAgainstCalvings
{
    private const int Unreadable = -2;

    /// <summary>
    /// Whether fewer calvings are on record by the day of her parity than it says, though the farm says that all her life's are: one of
    /// the two is wrong. Of a parity that cannot be read, or whose day cannot, it may be so, and of a birth that cannot be read as far as calvings are promised on that day.
    /// </summary>
    public static bool IsTooHigh(Herd herd, int animal)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var (recorded, on) = (herd.RecordedParity[animal], herd.DayOfParity(animal));
        if (herd.Vocabulary.Calving is not { } calving || (herd.BornEarliest[animal] <= Day.Start && !herd.BirthIsUnreadable[animal]) || herd.Sexes[animal] is Sex.Male or Sex.Steer)
        {
            return false;
        }

        // Of a birth that cannot be read nobody knows whether all her life is promised; it must not lend her parity belief.
        var by = IsUnreadable(herd, animal) ? herd.Coverage.KnownDay : on;
        var needed = herd.BornEarliest[animal] <= Day.Start ? by : herd.Coverage.NeededFrom[calving.Id][animal];
        return IsUnreadable(herd, animal)
            ? herd.Coverage.KnownDay >= needed && herd.Coverage.IsKept(animal, calving.Id, needed, herd.Coverage.KnownDay, strict: true)
            : recorded > Counted(herd, calving, animal, on) && herd.Coverage.IsKept(animal, calving.Id, needed, on, strict: true);
    }

    /// <summary>Whether her parity cannot be read, or not of which day it is.</summary>
    public static bool IsUnreadable(Herd herd, int animal)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.RecordedParity[animal] == Unreadable || (herd.RecordedParity[animal] > 0 && herd.DayOfParity(animal) <= Day.Start);
    }

    /// <summary>Days with a calving on record by the day of her parity.</summary>
    public static int CountedByItsDay(Herd herd, int animal)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.Vocabulary.Calving is { } calving ? Counted(herd, calving, animal, herd.DayOfParity(animal)) : 0;
    }

    internal static IEnumerable<Doubt> Find(Herd herd)
    {
        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (herd.RecordedParity[animal] is not (var recorded and >= 0) || IsUnreadable(herd, animal))
            {
                continue;
            }

            var counted = CountedByItsDay(herd, animal);
            if (counted > recorded || IsTooHigh(herd, animal))
            {
                yield return new Doubt(
                    "R0205", herd.AnimalLines[animal], DoubtfulCell.RowOfAnimals,
                    $"parity {recorded} of {herd.Numbers[animal]}, but {Entries.Count(counted, "calving", "calvings")} on record", "expected the two to agree",
                    "correct the parity, or the rows of her calvings");
            }
        }
    }

    private static int Counted(Herd herd, EventKind calving, int animal, int day)
    {
        var counted = 0;
        foreach (var calved in herd.Runs[calving.Id].DaysOf(animal))
        {
            counted += calved <= day ? 1 : 0;
        }

        return counted;
    }
}
