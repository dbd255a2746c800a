namespace Byrelaw.Planning.Sheets;

/// <summary>What is done on one morning for one session, of one kind of work.</summary>
/// <param name="Date">The morning.</param>
/// <param name="Session">For which session.</param>
/// <param name="InCalf">Whom to take as in calf on that morning, and who may be.</param>
/// <param name="RecordsEnd">The day up to which all that speaks against treating or using an animal is written down; null where nobody knows.</param>
public abstract record MorningSheet(LocalDate Date, NamedSession Session, InCalfOnDay InCalf, LocalDate? RecordsEnd)
{
    /// <summary>Which kind of work.</summary>
    public abstract SheetWork Work { get; }

    /// <summary>How many animals stand on it, spares among them.</summary>
    public abstract int Animals { get; }
}

/// <summary>Kinds of work, each with papers of its own.</summary>
public enum SheetWork
{
    /// <summary>Hormones, and devices in and out.</summary>
    Hormones,

    /// <summary>What somebody beside the animal finds out: scans, scores, weights.</summary>
    Scans,

    /// <summary>What a laboratory finds out.</summary>
    Samples,

    /// <summary>Embryos.</summary>
    Transfer,
}

/// <summary>An animal on a sheet.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Sort">Cow or heifer; null for one that stands on no list.</param>
public sealed record SheetAnimal(int Animal, string Number, AnimalSort? Sort);
