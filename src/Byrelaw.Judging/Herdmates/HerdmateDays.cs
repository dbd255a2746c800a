using Byrelaw.Judging.Criteria;
using Byrelaw.Judging.Days;
using Byrelaw.Judging.Truths;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Herdmates;

/// <summary>Who is of the herd (or its cows, or its heifers) on a day, with their values of one fact. Each
/// stretch of days on which that stays the same is worked out once.</summary>
internal sealed class HerdmateDays
{
    private readonly HerdDays _days;
    private readonly FactColumn _values;
    private readonly PresenceCriterion _presence;
    private readonly SortCriterion _sort;
    private readonly List<(int From, int Until, Herdmates Assumed, Herdmates Strict)> _stretches = [];

    public HerdmateDays(HerdDays days, Fact fact, HerdGroup group, int? calving)
    {
        _days = days;
        _values = days.Herd.Facts[fact.Id];
        _presence = new PresenceCriterion(days);
        var audience = group switch
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
            double? value = _values.States[animal] == FactState.Known ? _values.Numbers[animal] : null;
            assumed.Add(belongs.Assumed, value);
            strict.Add(belongs.Strict, value);
        }

        assumed.Sort();
        strict.Sort();
        return (day, until, assumed, strict);
    }
}

/// <summary>Those who surely belong, and those who may.</summary>
internal sealed class Herdmates
{
    public ValueGroup Sure { get; } = new();

    public ValueGroup Perhaps { get; } = new();

    public void Add(Truth belongs, double? value)
    {
        if (belongs != Truth.False)
        {
            (belongs == Truth.True ? Sure : Perhaps).Add(value);
        }
    }

    public void Sort()
    {
        Sure.Sort();
        Perhaps.Sort();
    }
}

/// <summary>Animals with their values, some without.</summary>
internal sealed class ValueGroup
{
    private readonly List<double> _values = [];

    public int WithoutValue { get; private set; }

    public int Count => _values.Count + WithoutValue;

    public void Add(double? value)
    {
        if (value is { } known)
        {
            _values.Add(known);
        }
        else
        {
            WithoutValue++;
        }
    }

    public void Sort() => _values.Sort();

    /// <summary>How many known values are greater than one, and how many are not.</summary>
    public (int Greater, int NotGreater) Split(double value)
    {
        int low = 0, high = _values.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (_values[middle] > value)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return (_values.Count - low, low);
    }
}
