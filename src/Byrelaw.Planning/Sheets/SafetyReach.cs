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

    /// <summary>Every kind of record that they look at, once.</summary>
    public static IEnumerable<Kind> Kinds(Rulebook rulebook, string list) => rulebook.Rules.Where(rule => rule.IsSafety && rule.IsFor(list)).Concat(rulebook.Floor)
        .SelectMany(rule => rule.Needs.Leaves(rulebook)).Select(leaf => new ConditionParts(leaf)).SelectMany(parts => parts.Kinds.Concat(parts.WindowKinds)).Select(kind => kind.Declaration).Distinct();
}
