namespace Byrelaw.Judging.Days;

/// <summary>
/// Counts what judging does, so that a test can hold the work of a rule to a bound that no machine's speed moves: days asked, days tried,
/// entries looked at. For one thread.
/// </summary>
internal sealed class StepCounter
{
    /// <summary>How many so far.</summary>
    public long Count { get; private set; }

    /// <summary>Some more.</summary>
    public void Take(int steps = 1) => Count += steps;
}
