namespace Byrelaw.Records.Sources;

/// <summary>
/// Which rows count in which herd. A row counts in every herd its animal was ever in; one of an animal that nobody knows, or about a whole mob or herd, in its own
/// herd, and where it does not say which that is, in all.
/// </summary>
internal sealed class HerdShares
{
    private readonly Dictionary<int, Dictionary<string, List<int>>> _own = [];
    private readonly Dictionary<int, List<int>> _ofAll = [];

    private HerdShares(ImmutableArray<string> herds) => Herds = herds;

    /// <summary>All herds, in order, each as the first row writes it.</summary>
    public ImmutableArray<string> Herds { get; }

    /// <summary>How many animals stand in no herd.</summary>
    public int WithoutHerd { get; private set; }

    /// <summary>Shares out the rows of sources.</summary>
    /// <param name="sources">Those that can be read.</param>
    /// <param name="found">Finds animals by what identifies them.</param>
    public static HerdShares Of(IReadOnlyList<TranslatedSource> sources, FoundAnimals found)
    {
        var herdsOf = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        var herds = new Dictionary<string, string>(StringComparer.Ordinal);
        var animals = new HashSet<string>(StringComparer.Ordinal);
        foreach (var source in sources.Where(source => source.HasHerds || source.Source.Rows == SourceRows.Animals))
        {
            foreach (var row in source.Rows.Where(row => source.Flaw(row) is null && !source.IsLeftOut(row)))
            {
                var (number, herd) = (source.Animal(row, found), source.HerdOf(row));
                if (herd.Length > 0)
                {
                    herds.TryAdd(herd, source.HerdAsWritten(row));
                    Note(herdsOf, number, herd);
                }

                if (source.Source.Rows == SourceRows.Animals && number.Length > 0 && !Unreadable.Is(number))
                {
                    animals.Add(number);
                }
            }
        }

        var shares = new HerdShares([.. herds.Values.Order(AnimalNumberOrder.Instance)]);
        if (herds.Count > 0)
        {
            shares.WithoutHerd = animals.Count(animal => !herdsOf.ContainsKey(animal));
            foreach (var source in sources)
            {
                shares.Share(source, found, herdsOf, animals);
            }
        }

        return shares;
    }

    /// <summary>The rows of a source that count in a herd, in their order.</summary>
    public IReadOnlyList<SourceRow> RowsOf(TranslatedSource source, string herd)
    {
        var own = _own.TryGetValue(source.Place, out var byHerd) && byHerd.TryGetValue(AlikeText.OfHerd(herd), out var its) ? its : [];
        int[] places = [.. own, .. _ofAll.GetValueOrDefault(source.Place) ?? []];
        Array.Sort(places);
        return Array.ConvertAll(places, place => source.Table.Rows[place]);
    }

    private static void Note(Dictionary<string, List<string>> herdsOf, string number, string herd)
    {
        if (number.Length == 0 || Unreadable.Is(number) || IsOfMany(number))
        {
            return;
        }

        if (!herdsOf.TryGetValue(number, out var herds))
        {
            herdsOf.Add(number, [herd]);
        }
        else if (!herds.Contains(herd))
        {
            herds.Add(herd);
        }
    }

    private void Share(TranslatedSource source, FoundAnimals found, Dictionary<string, List<string>> herdsOf, HashSet<string> animals)
    {
        var (own, ofAll) = (new Dictionary<string, List<int>>(StringComparer.Ordinal), new List<int>());
        for (var place = 0; place < source.Table.Rows.Count; place++)
        {
            var row = source.Table.Rows[place];
            var (number, herd) = source.Flaw(row) is null ? (source.Animal(row, found), source.HerdOf(row)) : ("", "");
            if (Unreadable.NumbersIn(number) is { Length: > 0 } among)
            {
                // It is one's of several: it counts wherever any of them was.
                foreach (var its in among.SelectMany(one => herdsOf.GetValueOrDefault(one) ?? []).Append(herd).Where(its => its.Length > 0).Distinct())
                {
                    Add(own, its, place);
                }
            }
            else if (!IsOfMany(number) && herdsOf.TryGetValue(number, out var herds))
            {
                herds.ForEach(its => Add(own, its, place));
            }
            else if (herd.Length > 0)
            {
                Add(own, herd, place);
            }
            else if (!animals.Contains(number))
            {
                ofAll.Add(place);
            }
        }

        _own[source.Place] = own;
        _ofAll[source.Place] = ofAll;
    }

    private static void Add(Dictionary<string, List<int>> own, string herd, int place)
    {
        if (!own.TryGetValue(herd, out var places))
        {
            own.Add(herd, places = []);
        }

        places.Add(place);
    }

    private static bool IsOfMany(string number) => number.Equals("herd", StringComparison.OrdinalIgnoreCase) || number.StartsWith("mob:", StringComparison.OrdinalIgnoreCase);
}
