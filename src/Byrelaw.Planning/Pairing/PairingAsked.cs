namespace Byrelaw.Planning.Pairing;

/// <summary>What is asked of a day of transfer.</summary>
/// <param name="Day">The day.</param>
public sealed record PairingAsked(LocalDate Day)
{
    /// <summary>Donors, and those booked for later, who are taken all the same, by number.</summary>
    public ImmutableHashSet<string> Also { get; init; } = [];

    /// <summary>Animals and embryos that are left out, by number and label.</summary>
    public ImmutableHashSet<string> Without { get; init; } = [];

    /// <summary>Pairs of the day's earlier sheet, by embryo: they stay where nothing that counts more speaks against it.</summary>
    public ImmutableDictionary<string, string> Earlier { get; init; } = ImmutableDictionary<string, string>.Empty;
}
