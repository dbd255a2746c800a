namespace Byrelaw.Judging.Criteria;

/// <summary><c>age at least 13 months</c>. A birth known only to the month or year answers what is the same for each of its days.</summary>
internal sealed class AgeCriterion(HerdDays days, AgeCondition condition) : LeafCriterion(days, condition, restsOnCoverage: false)
{
    private readonly TimeLimits _limits = new(condition.Test);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var earliest = Days.Herd.BornEarliest[animal];
        var latest = Days.Herd.BornLatest[animal];
        if (earliest == Day.Start)
        {
            notes?.FactMissing(animal, "born", isUnreadable: false);
            return Kleene.Unknown;
        }

        var (low, high) = _limits.Accepted(day);
        until = Math.Min(until, Math.Min(_limits.NextTurn(earliest, day), _limits.NextTurn(latest, day)) - 1);
        if (_limits.MayAcceptNone && earliest != latest)
        {
            until = Math.Min(until, day);
        }

        notes?.Age(animal, earliest, latest, day, condition.Test);
        if (earliest >= low && latest <= high)
        {
            return Kleene.True;
        }

        if (low <= high && latest >= low && earliest <= high)
        {
            notes?.FactMissing(animal, "born", isUnreadable: false);
            return Kleene.Unknown;
        }

        notes?.Remedy(earliest > high
            ? new Remedy(RemedyKind.Time, ["born"], Day.Date(_limits.FirstAccepting(latest)))
            : new Remedy(RemedyKind.ForGood, ["born"]));
        return Kleene.False;
    }
}
