namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Whether she was in a spell on a day. "On the days of its starting and its ending event she is in it. After a day with
/// both, the state flips from what it was before that day twice, i.e. is what it was before. In a spell after a start until
/// an end; hidden (uncovered) opposite events between make it not known."
/// </summary>
/// <remarks>Walks from birth day by day and keeps every state that she may be in.</remarks>
public sealed class SpellReference(FarmAsRead farm, CoverageReference coverage)
{
    private readonly Dictionary<(int Animal, string Spell, bool Strict), Truth[]> _known = [];

    /// <summary>On the day of judging itself.</summary>
    public Truth At(Spell spell, Moment moment) => Days(spell, moment)[moment.Day - coverage.Dawn];

    /// <summary>On any day from one to another: the Kleene "or" of all of them.</summary>
    public Truth OnAny(Spell spell, Moment moment, int from, int to)
    {
        var days = Days(spell, moment);
        var any = Truth.False;
        for (var day = Math.Max(from, coverage.Dawn); day <= to; day++)
        {
            var truth = days[day - coverage.Dawn];
            if (truth == Truth.True)
            {
                return truth;
            }

            any = truth == Truth.Unknown ? truth : any;
        }

        return any;
    }

    private Truth[] Days(Spell spell, Moment moment)
    {
        var key = (moment.Animal, spell.Name, moment.Strict);
        if (!_known.TryGetValue(key, out var days))
        {
            days = Walk(spell, moment.Animal, (kind, day) => coverage.Covers(moment.Animal, kind, day, day, moment.Strict));
            _known[key] = days;
        }

        return days;
    }

    /// <summary>Whether it would be known on all days from one to another, did these say which kinds cover which days.</summary>
    public bool IsKnown(Spell spell, int animal, int from, int to, Func<Kind, int, bool> covers)
    {
        var days = Walk(spell, animal, covers)[(Math.Max(from, coverage.Dawn) - coverage.Dawn)..(to + 1 - coverage.Dawn)];
        return days.Contains(Truth.True) || !days.Contains(Truth.Unknown);
    }

    private Truth[] Walk(Spell spell, int animal, Func<Kind, int, bool> covers)
    {
        var starts = farm.Of(animal, spell.From).Select(row => row.Day).ToHashSet();
        var ends = farm.Of(animal, spell.Until).Select(row => row.Day).ToHashSet();
        var truths = new Truth[coverage.Dusk - coverage.Dawn + 1];
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
                        after.Add(start == end ? was : start);
                    }
                }
            }

            truths[day - coverage.Dawn] = today.Count > 1 ? Truth.Unknown : Kleene.Of(today.Single());
            before = after;
        }

        return truths;

        bool[] MayHappen(HashSet<int> recorded, Kind kind, int day) =>
            recorded.Contains(day) ? [true] : covers(kind, day) ? [false] : [false, true];
    }
}
