namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>Costs that may be shared by a line of their own.</summary>
public enum SharedCosts
{
    /// <summary>Semen.</summary>
    Semen,

    /// <summary>Treatments and samples.</summary>
    Treatments,

    /// <summary>Transfers and the team's visits.</summary>
    Transfers,
}

/// <summary><c>costs shared "owner" 50%, "sharemilker" 50%</c>.</summary>
/// <param name="Kind">Which costs; null for all that no other line speaks of.</param>
/// <param name="Shares">Who pays how much, from 0 to 1, together 1.</param>
/// <param name="Span">Where.</param>
public sealed record CostsShared(SharedCosts? Kind, ImmutableArray<PayersShare> Shares, SourceSpan Span);

/// <summary>One who pays.</summary>
/// <param name="Who">As written.</param>
/// <param name="Share">From 0 to 1.</param>
public sealed record PayersShare(string Who, double Share);
