using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.Sheets;

/// <summary>Up to which day all is written down that the safety rules of a list and the floor look at: the least of its promised kinds.</summary>
internal static class SafetyReach
{
    /// <summary>The day; null where no record with a date could be read.</summary>
    public static LocalDate? Of(Rulebook rulebook, Herd herd, string list)
    {
        if (!herd.ReachesADay)
        {
            return null;
        }

        var coverage = herd.Coverage;
        var reach = Kinds(rulebook, list).Where(kind => coverage.Since[kind.Id] < Day.End && coverage.Reach[kind.Id] > Day.Start).Select(kind => coverage.Reach[kind.Id]);
        return Day.Date(reach.Append(coverage.KnownDay).Min());
    }

    /// <summary>Kinds of which not all is written down up to a day, each with the day up to which it is: boxes for a hormone want none. Where a male is in the herd, moves from mob to mob are among them.</summary>
    /// <param name="rulebook">The rules.</param>
    /// <param name="herd">The records.</param>
    /// <param name="lists">The lists whose safety rules are asked.</param>
    /// <param name="day">The day.</param>
    public static ImmutableArray<ShortKind> Short(Rulebook rulebook, Herd herd, IEnumerable<string> lists, LocalDate day)
    {
        var looked = lists.SelectMany(list => Kinds(rulebook, list));
        if (Array.Exists(herd.Sexes, sex => sex is Sex.Male or Sex.NotKnown))
        {
            looked = looked.Append(herd.Vocabulary.MobMove);
        }

        return Short(herd, looked, day);
    }

    /// <summary>Of some kinds those that are promised, and of which not all is written down up to a day.</summary>
    public static ImmutableArray<ShortKind> Short(Herd herd, IEnumerable<Kind> looked, LocalDate day)
    {
        var coverage = herd.Coverage;
        return
        [
            .. looked.DistinctBy(kind => kind.Id).Where(kind => coverage.Since[kind.Id] < Day.End && coverage.Reach[kind.Id] > Day.Start && coverage.Reach[kind.Id] < Day.Number(day))
                .Select(kind => new ShortKind(kind, Day.Date(coverage.Reach[kind.Id]))),
        ];
    }

    /// <summary>Every kind of record that they look at, once.</summary>
    public static IEnumerable<Kind> Kinds(Rulebook rulebook, string list) => rulebook.Rules.Where(rule => rule.IsSafety && rule.IsFor(list)).Concat(rulebook.Floor)
        .SelectMany(rule => rule.Needs.Leaves(rulebook)).Select(leaf => new ConditionParts(leaf)).SelectMany(parts => parts.Kinds.Concat(parts.WindowKinds)).Select(kind => kind.Declaration).Distinct();
}

/// <summary>A kind of record that is not written down far enough.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Reach">The day up to which it is.</param>
public sealed record ShortKind(Kind Kind, LocalDate Reach);
