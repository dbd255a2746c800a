namespace Byrelaw.Records.Events;

/// <summary>One row that could be read, about a mob or the whole herd.</summary>
/// <param name="Kind">What happened, or what was measured.</param>
/// <param name="Day">When.</param>
/// <param name="Line">Where it stands.</param>
/// <param name="Mob">Which mob; <see cref="WholeHerd"/> for all.</param>
/// <param name="Range">For a measure: the values that the result allows.</param>
/// <param name="Sample">For a measure: the sample's own number; null where none stands there.</param>
/// <param name="Target">For a move: the mob they move to.</param>
/// <param name="Answer">For a test: the place of its answer, or <see cref="KindRun.NotKnown"/>.</param>
internal readonly record struct GroupRow(int Kind, int Day, int Line, int Mob, AllowedRange Range = default, int Target = -1, string? Sample = null, byte Answer = KindRun.NotKnown)
{
    /// <summary>A detail that would tell whether it is one that a filter means is not known: there may be such a sample, or none.</summary>
    public bool MayNotBeMeant { get; init; }

    /// <summary>Every animal that is present.</summary>
    public const int WholeHerd = -1;
}
