namespace Byrelaw.Records.Herds;

/// <summary>
/// When each animal is in the herd. She is in from the day she joins (born here: from birth) to the
/// day before she leaves; on the day she leaves she is out.
/// </summary>
public sealed class Membership
{
    /// <summary>Animal count + 1 places.</summary>
    public required int[] Starts { get; init; }

    /// <summary>First day of each stretch; it lasts until the animal's next one. Every animal's
    /// first stretch starts at <see cref="Day.Start"/>.</summary>
    public required int[] From { get; init; }

    /// <summary>What she is in that stretch.</summary>
    public required Presence[] States { get; init; }

    /// <summary>Line of <c>events.csv</c> that starts it; 0 for birth or none.</summary>
    public required int[] Lines { get; init; }

    /// <summary>Id of the joining or leaving kind that starts it; -1 for birth or none.</summary>
    public required int[] Kinds { get; init; }

    /// <summary>By animal: the latest day on which a row says that she joined; <see cref="Day.Start"/> for none. Rows that cannot be read
    /// are passed over, as nowhere else: what is asked by them is only how much of what is on record went wrong.</summary>
    public required int[] JoinedOnRecord { get; init; }

    /// <summary>By animal: the first day after that on which a row says that she left; <see cref="Day.End"/> for none.</summary>
    public required int[] LeftOnRecord { get; init; }

    /// <summary>The place of the stretch that holds a day.</summary>
    public int StretchAt(int animal, int day)
    {
        var i = Starts[animal + 1] - 1;
        while (i > Starts[animal] && From[i] > day)
        {
            i--;
        }

        return i;
    }

    /// <summary>Whether she is in the herd on a day.</summary>
    public Presence At(int animal, int day) => States[StretchAt(animal, day)];
}
