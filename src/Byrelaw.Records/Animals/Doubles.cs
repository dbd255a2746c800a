namespace Byrelaw.Records.Animals;

/// <summary>
/// Animals that may be one under two numbers: with one official identity, or with numbers that a hand may have written for each
/// other. What happened to one may have happened to the other, until a person says which it is.
/// </summary>
internal sealed class Doubles
{
    // So many with one identity have a filler in its column: all pairs of them would be more than the herd has rows.
    private const int MostInPairs = 30;

    private readonly Dictionary<int, List<int>> _others = [];
    private readonly HashSet<int> _anybody = [];
    private readonly AnimalRow[] _animals;
    private readonly string[] _numbers;
    private readonly IReadOnlyList<ComparedNumbers> _different;
    private readonly List<DoubleNumbers> _pairs = [];

    private Doubles(AnimalTable animals, RecordKeeping? keeping)
    {
        _animals = animals.Rows;
        _numbers = animals.Numbers;
        _different = [.. (keeping?.Compared ?? []).Where(compared => !compared.AreOne)];
    }

    /// <summary>Each two once.</summary>
    public IReadOnlyList<DoubleNumbers> Pairs => _pairs;

    /// <summary>Whether there are any.</summary>
    public bool Any => _pairs.Count > 0;

    /// <summary>Looks for them.</summary>
    public static Doubles Of(AnimalTable animals, Vocabulary vocabulary, RecordKeeping? keeping)
    {
        var doubles = new Doubles(animals, keeping);
        foreach (var fact in vocabulary.Facts.Where(fact => fact.Type == FactType.Identity))
        {
            var column = animals.Facts[fact.Id];
            doubles.AddAlike(
                Enumerable.Range(0, animals.Numbers.Length).Where(animal => column.States[animal] == FactState.Known)
                    .Select(animal => (animal, AlikeText.OfIdentity(column.Texts[animal]!))),
                Likeness.Identity);
        }

        foreach (var said in (keeping?.Compared ?? []).Where(said => said.AreOne))
        {
            int[] places = [.. said.Numbers.Select(number => Place(animals, number)).Where(place => place >= 0).Distinct()];
            foreach (var other in places.Skip(1))
            {
                doubles.Add(places[0], other, Likeness.Said);
            }
        }

        // Numbers of digits alone, without a zero before them, differ from each other; only others can be like one of them.
        var odd = Enumerable.Range(0, animals.Numbers.Length).Where(animal => !IsPlain(animals.Numbers[animal])).ToList();
        var alike = odd.Select(animal => (Animal: animal, Text: AlikeText.OfNumber(animals.Numbers[animal]))).ToList();
        var plain = alike.Select(one => one.Text).Distinct()
            .Where(text => animals.Places.TryFind(Encoding.UTF8.GetBytes(text), out var place) && animals.Numbers[place] == text && IsPlain(text))
            .Select(text => (Place(animals, text), text));
        doubles.AddAlike(alike.Concat(plain), Likeness.Number);
        return doubles;
    }

    /// <summary>What is in doubt for others because of entries of one kind.</summary>
    public void Doubt<TResult>(int kind, ChunkedList<Staged<TResult>> rows, List<Gap> gaps)
        where TResult : struct
    {
        for (var chunk = 0; chunk < rows.ChunkCount; chunk++)
        {
            foreach (ref var row in rows.Chunk(chunk))
            {
                if (row.Animal != Staged<TResult>.TakenOut && _others.ContainsKey(row.Animal))
                {
                    Doubt(new Gap(row.Animal, kind, row.Day, row.Day, row.Line), gaps);
                }
            }
        }
    }

    /// <summary>What is in doubt for others because of something that is in doubt for one.</summary>
    public void Doubt(Gap ofOne, List<Gap> gaps)
    {
        if (ofOne.IsOfDouble || !_others.TryGetValue(ofOne.Animal, out var others))
        {
            return;
        }

        if (_anybody.Contains(ofOne.Animal))
        {
            gaps.Add(ofOne with { Animal = -1, IsOfDouble = true });
        }

        foreach (var other in others)
        {
            // What happened before she was born was not hers.
            if (ofOne.From <= Day.Start || ofOne.From >= _animals[other].BornFirst)
            {
                gaps.Add(ofOne with { Animal = other, IsOfDouble = true });
            }
        }
    }

    private static int Place(AnimalTable animals, string number) => animals.Places.TryFind(Encoding.UTF8.GetBytes(number), out var place) ? place : -1;

    private static bool IsPlain(string number) => number.Length > 0 && number[0] != '0' && !number.AsSpan().ContainsAnyExceptInRange('0', '9');

    private void AddAlike(IEnumerable<(int Animal, string Text)> texts, Likeness why)
    {
        foreach (var alike in texts.Where(one => one.Text.Length > 0).GroupBy(one => one.Text, one => one.Animal, StringComparer.Ordinal).Where(group => group.Count() > 1))
        {
            int[] group = [.. alike.Distinct().Order()];
            if (group.Length > MostInPairs)
            {
                _anybody.UnionWith(group);
            }

            for (var first = 0; first < group.Length && (first == 0 || group.Length <= MostInPairs); first++)
            {
                for (var second = first + 1; second < group.Length; second++)
                {
                    Add(group[first], group[second], why);
                }
            }
        }
    }

    private void Add(int first, int second, Likeness why)
    {
        var (a, b) = (_numbers[first], _numbers[second]);
        if ((_others.TryGetValue(first, out var known) && known.Contains(second)) || _different.Any(compared => compared.Numbers.Contains(a) && compared.Numbers.Contains(b)))
        {
            return;
        }

        _pairs.Add(new DoubleNumbers(first, second, why));
        ListOf(first).Add(second);
        ListOf(second).Add(first);
    }

    private List<int> ListOf(int animal)
    {
        if (!_others.TryGetValue(animal, out var others))
        {
            _others.Add(animal, others = []);
        }

        return others;
    }
}
