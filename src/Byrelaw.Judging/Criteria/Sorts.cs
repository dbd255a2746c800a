namespace Byrelaw.Judging.Criteria;

/// <summary>Says what sort of animal each one is on a day: by the same criterion that rules and lists for cows and heifers are judged by.</summary>
public sealed class Sorts
{
    private readonly Herd _herd;
    private readonly SortCriterion _cow;

    /// <summary>The sorts of a herd's animals.</summary>
    public Sorts(Herd herd) : this(new HerdDays(herd))
    {
    }

    internal Sorts(HerdDays days)
    {
        _herd = days.Herd;
        _cow = new SortCriterion(days, Audience.Cows, _herd.Vocabulary.Calving?.Id);
    }

    /// <summary>The sort of one animal.</summary>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="date">The day; after the known day, nothing more is taken to happen.</param>
    public AnimalSort On(int animal, LocalDate date) => On(animal, Day.Number(date));

    internal AnimalSort On(int animal, int day)
    {
        var until = int.MaxValue;
        return _herd.Sexes[animal] switch
        {
            Sex.Male or Sex.Steer => AnimalSort.Male,
            Sex.Female => _cow.On(animal, day, ref until, null).Assumed switch
            {
                Truth.True => AnimalSort.Cow,
                Truth.False => AnimalSort.Heifer,
                _ => AnimalSort.NotKnown,
            },
            _ => AnimalSort.SexNotKnown,
        };
    }
}
