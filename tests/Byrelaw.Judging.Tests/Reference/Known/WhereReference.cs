namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Whose mob is whose. "Whether she was with him is known only over days on which `mob` is promised complete for her" (and him).
/// "`no mob on this farm`: nobody moves, the column holds (blank females are one mob)."
/// </summary>
public sealed class WhereReference(FarmAsRead farm, CoverageReference coverage, RecordKeeping? keeping, Kind move)
{
    /// <summary>The one mob of all whose cell is blank, on a farm without mobs.</summary>
    public const string Blank = "";

    // A promise of which nothing says how far it reaches promises nothing.
    private readonly int? _noMobsFrom = new PromiseReference(keeping, move, farm.Known, farm.LatestEntry(move)).Since is null ? null : (keeping?.Complete ?? []).Where(complete => complete.IsNone && complete.Kinds.Any(kind => kind.Id == move.Id))
        .Select(complete => (int?)DayNumber.Of(complete.Since)).Max();

    /// <summary>Her mob on the evening of a day; null where it is not known.</summary>
    public string? On(int animal, int day, bool strict) =>
        day >= _noMobsFrom ? farm.Animals[animal].Mob ?? Blank
        : coverage.Covers(animal, move, day, day, strict) ? farm.Mobs.At(animal, day)
        : null;

    /// <summary>Every mob that she was in at any time of a day: "on the day she moves she was in the old one in the morning."</summary>
    public IEnumerable<string?> MobsOn(int animal, int day, bool strict)
    {
        yield return On(animal, day, strict);
        if (MovesIn(animal, day, day) && farm.Presence.At(animal, day - 1) != Truth.False)
        {
            yield return On(animal, day - 1, strict);
        }
    }

    /// <summary>A male whose column is blank, on a farm without mobs, is with the others from a `bull in` to its `bull out` only.</summary>
    public bool IsWithout(int animal, int day) => day >= _noMobsFrom && farm.Animals[animal].Mob is null;

    /// <summary>Whether a move of hers is on record in these days.</summary>
    public bool MovesIn(int animal, int from, int to) => farm.Of(animal, move).Any(row => row.Day >= from && row.Day <= to);

    /// <summary>Whether all moves of these days are on record.</summary>
    public bool IsKept(int animal, int from, int to, bool strict) => coverage.Covers(animal, move, from, to, strict);
}
