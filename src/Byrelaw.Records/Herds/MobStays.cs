namespace Byrelaw.Records.Herds;

/// <summary>
/// Which mob each animal is in, when. From dated mob moves; the <c>mob</c> column of
/// <c>animals.csv</c> counts only for an animal without one, and then always.
/// </summary>
public sealed class MobStays
{
    /// <summary>No mob is known.</summary>
    public const int NotKnown = -1;

    private string[] _names = [];

    /// <summary>Mob names; a mob's id is its place here.</summary>
    public required string[] Names
    {
        get => _names;
        init => _names = value;
    }

    /// <summary>Animal count + 1 places.</summary>
    public required int[] Starts { get; init; }

    /// <summary>First day of each stay; it lasts until the animal's next one.</summary>
    public required int[] From { get; init; }

    /// <summary>The mob of each stay; <see cref="NotKnown"/> where rows contradict each other or cannot be read.</summary>
    public required int[] Mob { get; init; }

    /// <summary>Line of <c>events.csv</c> that says so; 0 where it is the column of <c>animals.csv</c>.</summary>
    public required int[] Lines { get; init; }

    /// <summary>The mob that the column of <c>animals.csv</c> names for each animal, whatever else is on record; <see cref="NotKnown"/>
    /// where it is blank, less where it cannot be read.</summary>
    public int[] Columns { get; init; } = [];

    /// <summary>The mob with a name, however it is written; less than 0 where no record names it.</summary>
    public int Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var alike = Spellings.AlikeText.OfMob(name);
        return Array.FindIndex(Names, known => Spellings.AlikeText.OfMob(known) == alike);
    }

    /// <summary>Takes it that there are these mobs too, though nobody on record was ever in them: in made-up records, those that rules name.</summary>
    public void Add(IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        _names = [.. _names, .. names.Where(name => Find(name) < 0)];
    }

    /// <summary>The place of the stay that holds a day; -1 before the first.</summary>
    public int StayAt(int animal, int day)
    {
        for (var i = Starts[animal + 1] - 1; i >= Starts[animal]; i--)
        {
            if (From[i] <= day)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The mob on a day.</summary>
    public int At(int animal, int day) => StayAt(animal, day) is var stay and >= 0 ? Mob[stay] : NotKnown;
}
