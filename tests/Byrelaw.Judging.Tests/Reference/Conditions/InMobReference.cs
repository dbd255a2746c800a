namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Her latest move not after d. Before her first move, from an unreadable one on, two of one day: not known. A mob that no record names is not known for
/// everyone."
/// </summary>
public static class InMobReference
{
    public static Truth At(InMobCondition condition, Knowledge knowledge, Moment moment)
    {
        var isIn = knowledge.Farm.Mobs.At(moment.Animal, moment.Day) is { } hers
            ? Kleene.Any(condition.Mobs.Select(NameFolding.Fold).Select(mob => knowledge.Farm.MobNames.Contains(mob) ? Kleene.Of(mob == hers) : Truth.Unknown))
            : Truth.Unknown;
        return condition.IsNot ? Kleene.Not(isIn) : isIn;
    }

    /// <summary>The row that began her stay there, the first of several of one day; the column where none did.</summary>
    public static Evidence? Says(Knowledge knowledge, Moment moment)
    {
        var move = knowledge.Rulebook.Vocabulary.MobMove;
        if (knowledge.Farm.Mobs.At(moment.Animal, moment.Day) is not { } mob)
        {
            return null;
        }

        var since = knowledge.Farm.Mobs.StaysSince(moment.Animal, mob, moment.Day, knowledge.Coverage.Dawn);
        return knowledge.Farm.Of(moment.Animal, move).FirstOrDefault(row => row.Day == since && row.Mob == mob) is { } began
            ? new Evidence(move, null, DayNumber.Date(since), Shown(mob), "", began.Line)
            : new Evidence(null, move.Name, null, Shown(mob), "", PlainFarm.LineOf(moment.Animal));
    }

    /// <summary>As the generators write it.</summary>
    public static string Shown(string mob) => char.ToUpperInvariant(mob[0]) + mob[1..];
}
