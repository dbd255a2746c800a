using Byrelaw.Records.Herds;

namespace Byrelaw.Records.Tests.Literal;

/// <summary>The specification of presence and coverage, day by day from the plain rows, in no hurry.</summary>
internal sealed class LiteralHerd(IReadOnlyList<LiteralRow> rows, int since, int knownDay)
{
    private IEnumerable<LiteralRow> Gaps => rows.Where(row => row.IsGap);

    private IEnumerable<LiteralRow> Sound => rows.Where(row => !row.IsGap);

    /// <summary>What an animal is on a day of the play.</summary>
    public Presence PresenceOn(int animal, int day)
    {
        if (animal == 1 && day < LiteralRow.BornInPlay)
        {
            return Presence.Out;
        }

        bool IsStructural(LiteralRow row) => row.MayBe("purchase") || row.MayBe("sale");
        if (Gaps.Any(gap => gap.MayBeOf(animal) && IsStructural(gap) && (gap.Day is null || gap.IsBeforeBirth)))
        {
            return Presence.NotKnown;
        }

        var state = Presence.In;
        var isFirst = true;
        for (var today = 0; today <= day; today++)
        {
            var open = Gaps.Where(gap => gap.MayBeOf(animal) && IsStructural(gap) && gap.MayBeOn(today)).ToList();
            var joins = Sound.Any(row => row.Animal == animal && row.Day == today && row.Kind == "purchase");
            var leaves = Sound.Any(row => row.Animal == animal && row.Day == today && row.Kind == "sale");
            if (open.Count == 0 && !joins && !leaves)
            {
                continue;
            }

            if (isFirst)
            {
                state = StateBefore(open, joins, leaves);
                isFirst = false;
            }

            if (open.Count == 0 && joins && leaves)
            {
                if (today == day)
                {
                    return Presence.NotKnown;
                }

                continue;
            }

            state = open.Count > 0 ? Presence.NotKnown : joins ? Presence.In : Presence.Out;
        }

        // What comes first may lie after the day that is asked about.
        for (var later = day + 1; isFirst && later <= LiteralRow.Days; later++)
        {
            var open = Gaps.Where(gap => gap.MayBeOf(animal) && IsStructural(gap) && gap.MayBeOn(later)).ToList();
            var joins = Sound.Any(row => row.Animal == animal && row.Day == later && row.Kind == "purchase");
            var leaves = Sound.Any(row => row.Animal == animal && row.Day == later && row.Kind == "sale");
            if (open.Count > 0 || joins || leaves)
            {
                return StateBefore(open, joins, leaves);
            }
        }

        return state;
    }

    /// <summary>Whether "no heat on record" means "no heat" for an animal on a day.</summary>
    public bool CoversHeatOn(int animal, int day, bool strict)
    {
        if (Gaps.Any(gap => MayBeOfIncludingTheUnborn(gap, animal) && gap.MayBe("heat") && gap.MayBeOn(day)))
        {
            return false;
        }

        if (animal == 1 && day < LiteralRow.BornInPlay)
        {
            return true;
        }

        // Day by day: whoever may have joined since, or may have left before, is not covered.
        bool MayJoinOn(int on) => Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("purchase") && gap.MayBeOn(on)) || Joins(animal, on);
        bool MayLeaveOn(int on) => Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("sale") && gap.MayBeOn(on)) || Leaves(animal, on);
        var lastJoining = Enumerable.Range(0, LiteralRow.Days).Where(MayJoinOn).Append(-1).Max();
        if (day < lastJoining || day < since || (strict && day > knownDay))
        {
            return false;
        }

        for (var on = Math.Max(lastJoining, 0); on < day; on++)
        {
            var cameBack = on == lastJoining && Joins(animal, on) && PresenceOn(animal, on + 1) == Presence.In;
            if (MayLeaveOn(on) && !cameBack)
            {
                return false;
            }
        }

        return true;
    }

    private static Presence StateBefore(List<LiteralRow> open, bool joins, bool leaves) =>
        open.Count > 0 ? open.Any(gap => gap.MayBe("purchase")) ? Presence.NotKnown : Presence.In
        : joins && leaves ? Presence.NotKnown
        : joins ? Presence.Out
        : Presence.In;

    private static bool MayBeOfIncludingTheUnborn(LiteralRow gap, int animal) => gap.Animal is null || gap.Animal == animal;

    private bool Joins(int animal, int day) => Sound.Any(row => row.Animal == animal && row.Day == day && row.Kind == "purchase");

    private bool Leaves(int animal, int day) => Sound.Any(row => row.Animal == animal && row.Day == day && row.Kind == "sale");
}
