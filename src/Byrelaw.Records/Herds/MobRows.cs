namespace Byrelaw.Records.Herds;

/// <summary>
/// Rows about a mob or the whole herd that begin or end a spell, and those that move a mob: a bull who is put in a mob stays
/// with that mob, whoever enters or leaves it.
/// </summary>
public sealed class MobRows
{
    /// <summary>A farm without such rows.</summary>
    public static readonly MobRows None = new() { Spells = [], Moves = [] };

    /// <summary>What begins or ends a spell, by day, then line.</summary>
    public required MobRow[] Spells { get; init; }

    /// <summary>The lines of <see cref="Spells"/> in <c>events.csv</c>, by which gaps are told that such a row left.</summary>
    public IReadOnlySet<int> Lines { get; init; } = new HashSet<int>();

    /// <summary>Where animals that stand in no list were moved to, by day, then line: any of them may be a bull. A mob that cannot be read is
    /// <see cref="MobStays.NotKnown"/>, a day <see cref="Day.Start"/>.</summary>
    public MobRow[] Strangers { get; init; } = [];

    /// <summary>What moves a mob or the herd, by day, then line.</summary>
    public required MobMove[] Moves { get; init; }
}

/// <summary>A row that begins or ends a spell of a mob's.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Mob">To which mob; <see cref="MobStays.NotKnown"/> for the whole herd.</param>
/// <param name="Day">When.</param>
/// <param name="Line">Of <c>events.csv</c>.</param>
public readonly record struct MobRow(int Kind, int Mob, int Day, int Line);

/// <summary>A row that moves a whole mob.</summary>
/// <param name="Mob">Which mob; <see cref="MobStays.NotKnown"/> for the whole herd.</param>
/// <param name="Target">Where to.</param>
/// <param name="Day">When.</param>
/// <param name="Line">Of <c>events.csv</c>.</param>
public readonly record struct MobMove(int Mob, int Target, int Day, int Line);
