namespace Byrelaw.Judging.Criteria;

/// <summary>
/// <c>running with bull</c>, <c>not running with bull in the last 35 days</c>: whether she was in the spell on any
/// day of the window. On the days of its starting and ending events she was.
/// </summary>
internal sealed class SpellCriterion(HerdDays days, SpellCondition condition, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly SpellDays _spell = days.InSpell(condition.Spell);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var bounds = Bounds.UpTo(day).From(day);
        var isStrictlyKnown = true;
        var edges = _spell.Edges(animal);
        if (condition.Windows.IsEmpty)
        {
            until = Math.Min(until, edges.Next(day) - 1);
        }
        else
        {
            var reading = windows.Read(animal, day, ref until, notes);
            if (!reading.IsKnown)
            {
                notes?.Nothing();
                return Kleene.Unknown;
            }

            windows.LimitBy(edges, day, reading, ref until);
            bounds = reading.Together;
            if (bounds.High < bounds.Low && bounds.High == day)
            {
                until = Math.Min(until, bounds.Low - 1);
            }

            var latest = Math.Max(bounds.Latest, bounds.StrictLatest);
            if (latest > bounds.High || (latest == bounds.High && windows.AnyHighStands))
            {
                // The latest first day that the window may have is not reached yet, or is passed from tomorrow on: then every day may tell.
                until = day;
            }

            isStrictlyKnown = reading.IsStrictlyKnown;
        }

        var isIn = In(animal, bounds, strict: false, notes);
        var isInStrictly = day <= Days.KnownDay ? isIn : isStrictlyKnown ? In(animal, bounds, strict: true, null) : Truth.Unknown;
        if (notes is not null)
        {
            notes.Remedy(condition.Not && !condition.Windows.IsEmpty
                ? new Remedy(RemedyKind.Time, [])
                : new Remedy(RemedyKind.NewEvent, [condition.Not ? condition.Spell.Until.Name : condition.Spell.From.Name]));
        }

        var answer = Kleene.Of(isIn, isInStrictly);
        return condition.Not ? !answer : answer;
    }

    private Truth In(int animal, in Bounds bounds, bool strict, Notes? notes)
    {
        var low = strict ? bounds.StrictLow : bounds.Low;
        var (sure, maybe) = _spell.Latest(animal, low, bounds.High, strict, notes);
        notes?.Spell(sure >= low ? sure : null);
        if (sure >= (strict ? bounds.StrictLatest : bounds.Latest))
        {
            return Truth.True;
        }

        return sure >= low || maybe >= low ? Truth.Unknown : Truth.False;
    }
}
