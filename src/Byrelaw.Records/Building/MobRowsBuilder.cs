namespace Byrelaw.Records.Building;

/// <summary>Puts the rows of mobs that begin and end spells, and that move mobs, in order.</summary>
internal static class MobRowsBuilder
{
    /// <summary>By day, then line.</summary>
    /// <param name="groups">Rows of known mobs and of the herd that are no moves.</param>
    /// <param name="moves">Moves of known mobs and of the herd.</param>
    /// <param name="strangers">Moves of animals that nobody listed.</param>
    /// <param name="isOfSpell">By kind id: whether it begins or ends a spell.</param>
    public static MobRows Build(IReadOnlyList<GroupRow> groups, IReadOnlyList<GroupRow> moves, MobRow[] strangers, bool[] isOfSpell)
    {
        GroupRow[] spells = [.. groups.Where(row => isOfSpell[row.Kind]).OrderBy(row => row.Day).ThenBy(row => row.Line)];
        return new MobRows
        {
            Spells = Array.ConvertAll(spells, row => new MobRow(row.Kind, row.Mob, row.Day, row.Line)),
            Strangers = strangers,
            Lines = spells.Select(row => row.Line).ToHashSet(),
            Moves = [.. moves.OrderBy(row => row.Day).ThenBy(row => row.Line).Select(row => new MobMove(row.Mob, row.Target, row.Day, row.Line))],
        };
    }
}
