namespace Byrelaw.Records.Building;

/// <summary>Goes through the days once and knows who is in which mob.</summary>
internal sealed class MobSweep
{
    private readonly MobStays _stays;
    private readonly int[] _order;
    private readonly int[] _animalOf;
    private readonly List<int>[] _members;
    private readonly int[] _mobOf;
    private readonly int[] _placeOf;
    private int _next;

    /// <summary>Starts before all days.</summary>
    public MobSweep(MobStays stays, int animals)
    {
        _stays = stays;
        _order = [.. Enumerable.Range(0, stays.From.Length)];
        Array.Sort((int[])stays.From.Clone(), _order);
        _animalOf = new int[stays.From.Length];
        _members = [.. Enumerable.Range(0, stays.Names.Length + 1).Select(_ => new List<int>())];
        _mobOf = new int[animals];
        _placeOf = new int[animals];
        for (var animal = 0; animal < animals; animal++)
        {
            _animalOf.AsSpan(stays.Starts[animal]..stays.Starts[animal + 1]).Fill(animal);
            _mobOf[animal] = MobStays.NotKnown;
            _placeOf[animal] = animal;
            _members[0].Add(animal);
        }
    }

    /// <summary>Goes on to a day, never back.</summary>
    public void GoTo(int day)
    {
        for (; _next < _order.Length && _stays.From[_order[_next]] <= day; _next++)
        {
            Move(_animalOf[_order[_next]], _stays.Mob[_order[_next]]);
        }
    }

    /// <summary>The animals in a mob; for <see cref="MobStays.NotKnown"/> those whose mob is not known.</summary>
    public IReadOnlyList<int> In(int mob) => _members[mob + 1];

    /// <summary>The mob that an animal is in.</summary>
    public int MobOf(int animal) => _mobOf[animal];

    private void Move(int animal, int mob)
    {
        var old = _members[_mobOf[animal] + 1];
        var last = old[^1];
        old[_placeOf[animal]] = last;
        _placeOf[last] = _placeOf[animal];
        old.RemoveAt(old.Count - 1);
        _mobOf[animal] = mob;
        _placeOf[animal] = _members[mob + 1].Count;
        _members[mob + 1].Add(animal);
    }
}
