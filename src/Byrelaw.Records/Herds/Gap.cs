namespace Byrelaw.Records.Herds;

/// <summary>
/// What a row that could not be read might have said. It suspends coverage; for a lookup it is a
/// sample with result not known in every window that its date could fall in.
/// It is dated on one day, on one of several, or on any.
/// </summary>
/// <param name="Animal">Whose; -1 for any animal.</param>
/// <param name="Kind">The kind's id; -1 for any kind.</param>
/// <param name="From">First day it can be dated; <see cref="Day.Start"/> where the date cannot be read.</param>
/// <param name="To">Last day it can be dated; <see cref="Day.End"/> where the date cannot be read.</param>
/// <param name="Line">Its line of <c>events.csv</c>.</param>
public readonly record struct Gap(int Animal, int Kind, int From, int To, int Line)
{
    /// <summary>Whether it is an entry, or a gap, of another animal that may be the same one.</summary>
    public bool IsOfDouble { get; init; }

    /// <summary>Whether the row can be read, and only whether it is true is not known: a calving too soon after another.</summary>
    public bool IsTooNear { get; init; }

    /// <summary>Whether the row can be read, and only whether a filter means it is not known.</summary>
    public bool IsOfDetails { get; init; }

    /// <summary>Whether she has such an entry on that very day, though it may be wrong, or another than is meant: no age speaks against it.</summary>
    public bool IsOnRecord => IsTooNear || IsOfDetails;

    /// <summary>Whether what stands there can be read as something else, and only may tell of this too.</summary>
    public bool IsHint { get; init; }

    /// <summary>Of a row of no known kind: the kind whose name is spelt so nearly like the word that stands there; null for none.</summary>
    public int? Like { get; init; }

    /// <summary>In place of a line of <c>events.csv</c>, one of the animals' file.</summary>
    public static int OfAnimals(int line) => int.MinValue + line;

    /// <summary>Whether it is what a row of an open sheet would write: <see cref="Line"/> counts down from -1, its place among the <see cref="Herd.OpenRows"/>.</summary>
    public bool IsOfSheet { get; init; }

    /// <summary>Whether it is the start of a spell that is not on record, though its end is, or may be: <see cref="Line"/> is the end's.</summary>
    public bool IsLostStart { get; init; }
}
