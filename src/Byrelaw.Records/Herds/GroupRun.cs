namespace Byrelaw.Records.Herds;

/// <summary>
/// Results of one kind that are recorded for a mob or the herd, and may or may not be each member's: of a test, those of mobs
/// and of the herd; of a measure, those of the herd, and of a mob those of which a detail does not say whether a filter means them. Sorted by day, then line.
/// </summary>
public sealed class GroupRun
{
    /// <summary>Mobs; <see cref="MobStays.NotKnown"/> for the whole herd.</summary>
    public required int[] Mobs { get; init; }

    /// <summary>Day numbers.</summary>
    public required int[] Days { get; init; }

    /// <summary>Lines of <c>events.csv</c>.</summary>
    public required int[] Lines { get; init; }

    /// <summary>As <see cref="KindRun.Answers"/>; empty for measures.</summary>
    public byte[] Answers { get; init; } = [];

    /// <summary>As <see cref="KindRun.Low"/>; empty for tests.</summary>
    public double[] Low { get; init; } = [];

    /// <summary>As <see cref="KindRun.High"/>; empty for tests.</summary>
    public double[] High { get; init; } = [];
}
