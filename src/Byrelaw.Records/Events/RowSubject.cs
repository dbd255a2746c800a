namespace Byrelaw.Records.Events;

/// <summary>Whom a row is about.</summary>
internal enum SubjectSort : byte
{
    /// <summary>It cannot be read.</summary>
    Unreadable,

    /// <summary>One animal.</summary>
    Animal,

    /// <summary>A mob.</summary>
    Mob,

    /// <summary>The whole herd.</summary>
    Herd,

    /// <summary>An embryo, by its label.</summary>
    Embryo,
}

/// <summary>Whom a row is about.</summary>
/// <param name="Sort">Which sort of subject.</param>
/// <param name="Number">The animal's place in the herd, or the mob's number.</param>
internal readonly record struct RowSubject(SubjectSort Sort, int Number)
{
    /// <summary>For a gap: the animal's place; -1 for any animal.</summary>
    public int AnimalOfGap => Sort == SubjectSort.Animal ? Number : -1;
}
