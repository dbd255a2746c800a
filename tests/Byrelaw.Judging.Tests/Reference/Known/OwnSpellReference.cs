namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Whether she was in a spell on a day by her own rows. "On the days of its starting and its ending event she is in it. After a day with
/// both, the state flips from what it was before that day twice, i.e. is what it was before. In a spell after a start until
/// an end; hidden (uncovered) opposite events between make it not known."
/// An end without its start: she may have been in it since the end before, joining or birth.
/// </summary>
/// <remarks>Walks from birth day by day and keeps every state that she may be in.</remarks>
public sealed class OwnSpellReference(FarmAsRead farm, CoverageReference coverage, SpellEndsReference endings)
{
    private readonly Dictionary<(int Animal, string Spell, bool Strict), Truth[]> _known = [];

    public Truth On(Spell spell, int animal, int day, bool strict)
    {
        var key = (animal, spell.Name, strict);
        if (!_known.TryGetValue(key, out var days))
        {
            _known[key] = days = Walk(spell, animal, (kind, each) => coverage.Covers(animal, kind, each, each, strict), _ => false);
        }

        return days[day - coverage.Dawn];
    }

    /// <summary>Whether it would be known on all days from one to another, did these say which kinds cover which days.</summary>
    /// <param name="settles">Whether these would say of a start that is not on record when it was.</param>
    public bool IsKnown(Spell spell, int animal, int from, int to, Func<Kind, int, bool> covers, Predicate<Unread> settles)
    {
        var first = Math.Max(from, coverage.Dawn);
        if (to < first)
        {
            return true;
        }

        var days = Walk(spell, animal, covers, settles)[(first - coverage.Dawn)..(to + 1 - coverage.Dawn)];
        return days.Contains(Truth.True) || !days.Contains(Truth.Unknown);
    }

    private Truth[] Walk(Spell spell, int animal, Func<Kind, int, bool> covers, Predicate<Unread> settles)
    {
        var starts = farm.Of(animal, spell.From).Where(row => !row.OfGroup).Select(row => row.Day).ToHashSet();
        var ends = farm.Of(animal, spell.Until).Select(row => row.Day).ToHashSet();
        var joins = farm.Happenings.Where(row => row.Animal == animal && endings.Joins(animal, row.Day)).Select(row => row.Day).ToHashSet();
        var truths = new Truth[coverage.Dusk - coverage.Dawn + 1];
        var lost = farm.Unread.Where(row => row.LostTo is not null && row.Animal == animal && row.Kind!.Id == spell.From.Id && !settles(row)).ToList();
        var before = new HashSet<bool> { false };
        for (var day = coverage.Dawn; day <= coverage.Dusk; day++)
        {
            var today = new HashSet<bool>();
            var after = new HashSet<bool>();
            foreach (var was in before)
            {
                foreach (var start in MayHappen(starts, spell.From, day))
                {
                    // An end that nobody wrote down is of no account where she was not in.
                    foreach (var end in was || start ? MayHappen(ends, spell.Until, day) : [ends.Contains(day)])
                    {
                        today.Add(was || start || end);
                        after.Add(start == end ? was && !joins.Contains(day) : start);
                    }
                }
            }

            truths[day - coverage.Dawn] = today.Count > 1 ? Truth.Unknown : Kleene.Of(today.Single());
            if (truths[day - coverage.Dawn] == Truth.False && lost.Any(row => row.MayBeIn(day, day)))
            {
                truths[day - coverage.Dawn] = Truth.Unknown;
            }

            before = endings.EndsAll(spell, day) ? [false] : after;
        }

        return truths;

        bool[] MayHappen(HashSet<int> recorded, EventKind kind, int day) =>
            recorded.Contains(day) ? [true] : covers(kind, day) ? [false] : [false, true];
    }
}
