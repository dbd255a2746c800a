namespace Byrelaw.Judging.Herdmates;

/// <summary>Who is of the herd (or its cows, or its heifers) on a day, with their values of one fact. Each
/// stretch of days on which that stays the same is worked out once.</summary>
internal sealed class HerdmateDays
{
    private readonly HerdDays _days;
    private readonly FactColumn _values;
    private readonly bool _withValue;
    private readonly PresenceCriterion _presence;
    private readonly SortCriterion _sort;
    private readonly List<(int From, int Until, Herdmates Assumed, Herdmates Strict)> _stretches = [];

    public HerdmateDays(HerdDays days, StandingCondition condition, int? calving)
    {
        _days = days;
        _withValue = condition.WithValue;
        _values = days.Herd.Facts[condition.Fact.Id];
        _presence = new PresenceCriterion(days);
        var audience = condition.Group switch
        {
            HerdGroup.Cows => Audience.Cows,
            HerdGroup.Heifers => Audience.Heifers,
            _ => Audience.Females,
        };
        _sort = new SortCriterion(days, audience, calving);
    }

    /// <summary>The herdmates on a day.</summary>
    public Herdmates On(int day, bool strict, ref int until)
    {
        foreach (var stretch in _stretches)
        {
            if (stretch.From <= day && day <= stretch.Until)
            {
                until = Math.Min(until, stretch.Until);
                return strict ? stretch.Strict : stretch.Assumed;
            }
        }

        _stretches.Add(Work(day));
        until = Math.Min(until, _stretches[^1].Until);
        return strict ? _stretches[^1].Strict : _stretches[^1].Assumed;
    }

    private (int From, int Until, Herdmates Assumed, Herdmates Strict) Work(int day)
    {
        var until = int.MaxValue;
        var assumed = new Herdmates();
        var strict = new Herdmates();
        for (var animal = 0; animal < _days.Herd.Count; animal++)
        {
            var belongs = _presence.On(animal, day, ref until, null);
            belongs = belongs.IsFalse ? belongs : belongs & _sort.On(animal, day, ref until, null);
            Add(assumed, belongs.Assumed, animal);
            Add(strict, belongs.Strict, animal);
        }

        for (var i = 0; i < _days.Herd.AnimalsWithoutNumber; i++)
        {
            assumed.Add(Truth.Unknown, null);
            strict.Add(Truth.Unknown, null);
        }

        assumed.Sort();
        strict.Sort();
        return (day, until, assumed, strict);
    }

    /// <summary>Of those with a value, one whose cell cannot be read may be one; one whose cell is blank is none.</summary>
    private void Add(Herdmates mates, Truth belongs, int animal)
    {
        switch (_values.States[animal])
        {
            case FactState.Known:
                mates.Add(belongs, _values.Numbers[animal]);
                break;
            case FactState.Unreadable when _withValue:
                mates.Add(belongs == Truth.True ? Truth.Unknown : belongs, null);
                break;
            case not FactState.Unreadable when _withValue:
                mates.LeaveOut(belongs);
                break;
            default:
                mates.Add(belongs, null);
                break;
        }
    }
}
