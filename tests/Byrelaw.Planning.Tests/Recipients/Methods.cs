using Byrelaw.Language.Sources;

namespace Byrelaw.Planning.Tests.Recipients;

/// <summary>Methods as the rule files would give them.</summary>
internal static class Methods
{
    public static readonly Method Insert = new() { Name = "Insert", HeatDay = 9, Accepted = Share(0.8, 30), Span = default };

    /// <summary>Heat in 70% of those treated, around day 3; 90% of those seen are accepted.</summary>
    public static readonly Method ProstaglandinOnce = new()
    {
        Name = "Prostaglandin once",
        InHeat = new(Share(0.7), [(2, 0.2), (3, 0.45), (4, 0.25), (5, 0.1)]),
        Accepted = Share(0.9),
        Again = new(5, 11, 14),
        Span = default,
    };

    public static readonly Method NaturalHeat = new()
    {
        Name = "Natural heat",
        CycleDays = 21,
        HeatSeen = Share(0.8),
        Accepted = Share(0.88),
        Span = default,
    };

    public static Share Share(double share, double? weight = null) => new(share, weight, null, default);

    public static Share Counted(int hits, int of) => new(0, null, new(hits, of, null), default);
}
