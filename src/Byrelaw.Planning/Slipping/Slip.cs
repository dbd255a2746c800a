namespace Byrelaw.Planning.Slipping;

/// <summary>What goes wrong.</summary>
public enum SlipKind
{
    /// <summary>The collection, and the transfers with it, come some days later.</summary>
    CollectionLater,

    /// <summary>The collection yields nothing.</summary>
    NoEggs,

    /// <summary>The embryos come some days later than they should.</summary>
    NoCourier,

    /// <summary>A treatment is given some days late.</summary>
    TreatmentLate,
}

/// <summary>Something that goes wrong, and when people learn of it.</summary>
/// <param name="Kind">What.</param>
/// <param name="Session">In which session, from 1.</param>
/// <param name="Days">How many days late; at least 1, not used where there are no eggs.</param>
/// <param name="On">The day on which people learn of it.</param>
/// <param name="Method">For a late treatment: the method.</param>
/// <param name="Day">For a late treatment: the day of the method.</param>
public sealed record Slip(SlipKind Kind, int Session, int Days, LocalDate On, string? Method = null, int? Day = null);
