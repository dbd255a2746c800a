namespace Byrelaw.Records.Herds;

/// <summary>
/// One kind of event, measure or test over the whole herd: for each animal one run of entries,
/// sorted by day, then by source line. Entries of animal a stand at places
/// <c>Starts[a]</c> to <c>Starts[a + 1] - 1</c> of every array.
/// </summary>
/// <remarks>
/// An event stands once a day, with its first line. Measures and tests keep every result. Mob and
/// herd rows of an event are here for each member; mob rows of a measure or test are never here
/// (<see cref="MobRun"/>). A row that could not be read is not here but in <see cref="Gap"/>.
/// </remarks>
public sealed class KindRun
{
    /// <summary>An answer that is not known: the result is blank, pending or not a declared answer.</summary>
    public const byte NotKnown = 255;

    /// <summary>Count + 1 places.</summary>
    public required int[] Starts { get; init; }

    /// <summary>Day numbers.</summary>
    public required int[] Days { get; init; }

    /// <summary>Lines of <c>events.csv</c>, from 1.</summary>
    public required int[] Lines { get; init; }

    /// <summary>
    /// For a measure, the lowest value each result allows, in the declared unit: the value itself;
    /// 0 (or the scale's low end) for <c>&lt;3</c>; just above 10 for <c>&gt;10</c>; negative infinity where the
    /// result is not known. Empty for events and tests.
    /// </summary>
    public double[] Low { get; init; } = [];

    /// <summary>For a measure, the highest value each result allows: the value itself; just below 3 for <c>&lt;3</c>;
    /// positive infinity (or the scale's high end) for <c>&gt;10</c>; positive infinity where not known.</summary>
    public double[] High { get; init; } = [];

    /// <summary>For a test, the place of each answer among the declared ones, or <see cref="NotKnown"/>.</summary>
    public byte[] Answers { get; init; } = [];

    /// <summary>The days of one animal's entries.</summary>
    public ReadOnlySpan<int> DaysOf(int animal) => Days.AsSpan(Starts[animal], Starts[animal + 1] - Starts[animal]);
}
