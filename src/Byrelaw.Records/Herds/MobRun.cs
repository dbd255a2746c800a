namespace Byrelaw.Records.Herds;

/// <summary>Results of one measure that are recorded for a mob, not for an animal: for each mob
/// one run, sorted by day, then line.</summary>
public sealed class MobRun
{
    /// <summary>Mob count + 1 places.</summary>
    public required int[] Starts { get; init; }

    /// <summary>Day numbers.</summary>
    public required int[] Days { get; init; }

    /// <summary>Lines of <c>events.csv</c>.</summary>
    public required int[] Lines { get; init; }

    /// <summary>As <see cref="KindRun.Low"/>.</summary>
    public required double[] Low { get; init; }

    /// <summary>As <see cref="KindRun.High"/>.</summary>
    public required double[] High { get; init; }
}
