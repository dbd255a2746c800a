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

        var state = StateBefore(animal);
        for (var today = 0; today <= day; today++)
        {
            var isOpen = Gaps.Any(gap => gap.MayBeOf(animal) && IsStructural(gap) && gap.MayBeOn(today));
            if (!isOpen && Joins(animal, today) && Leaves(animal, today))
            {
                // Nobody can tell, up to the next row about it.
                state = Presence.NotKnown;
                continue;
            }

            state = isOpen ? Presence.NotKnown : Joins(animal, today) ? Presence.In : Leaves(animal, today) ? Presence.Out : state;
        }

        return state;
    }

    /// <summary>Whether "no heat on record" means "no heat" for an animal on a day.</summary>
    public bool CoversHeatOn(int animal, int day, bool strict)
    {
        if (animal == 1 && day < LiteralRow.BornInPlay)
        {
            return true;
        }

        if (Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("heat") && gap.MayBeOn(day)))
        {
            return false;
        }

        bool MayJoinOn(int on) => Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("purchase") && gap.MayBeOn(on)) || Joins(animal, on);
        bool MayLeaveOn(int on) => Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("sale") && gap.MayBeOn(on)) || Leaves(animal, on);
        var days = Enumerable.Range(0, LiteralRow.Days).ToArray();
        if (day < since || (strict && day > knownDay) || days.Any(on => on > day && MayJoinOn(on)))
        {
            return false;
        }

        // Whoever may have left since she surely came may not be here any more.
        var surelyJoined = days.Where(on => Joins(animal, on)).Append(-1).Max();
        for (var on = Math.Max(surelyJoined, 0); on < day; on++)
        {
            var cameBack = on == surelyJoined && PresenceOn(animal, on + 1) == Presence.In;
            if (MayLeaveOn(on) && !cameBack)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>What she was before anything: the first thing that happened decides, and it may have been any up to the first that is sure.</summary>
    private Presence StateBefore(int animal)
    {
        for (var (day, mayBeOut, mayBeIn) = (0, false, false); day < LiteralRow.Days; day++)
        {
            mayBeOut |= Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("purchase") && gap.MayBeOn(day)) || Joins(animal, day);
            mayBeIn |= Gaps.Any(gap => gap.MayBeOf(animal) && gap.MayBe("sale") && gap.MayBeOn(day)) || Leaves(animal, day);
            var isSure = Joins(animal, day) || Leaves(animal, day);
            if (isSure || day == LiteralRow.Days - 1)
            {
                return !mayBeOut ? Presence.In : mayBeIn || !isSure ? Presence.NotKnown : Presence.Out;
            }
        }

        return Presence.In;
    }

    private bool Joins(int animal, int day) => Sound.Any(row => row.Animal == animal && row.Day == day && row.Kind == "purchase");

    private bool Leaves(int animal, int day) => Sound.Any(row => row.Animal == animal && row.Day == day && row.Kind == "sale");
}
