namespace Byrelaw.Records.Sources;

/// <summary>
/// Rows of <c>animals.csv</c>, made from sources: what several sources say of one animal is one row. Where they differ, nobody knows.
/// </summary>
internal sealed class AnimalRows
{
    private readonly Dictionary<string, (RowPlace Place, string Herd, Dictionary<string, string> Said)> _animals = new(StringComparer.Ordinal);
    private readonly List<(RowPlace Place, Dictionary<string, string>? Said, string Number)> _rows = [];
    private readonly HashSet<string> _notKnown = new(StringComparer.Ordinal);
    private readonly HashSet<(string Number, string Name)> _notKnownOf = [];
    private readonly Vocabulary _vocabulary;
    private RowPlace _place;
    private string _number = "";
    private string _herd = "";

    /// <summary>Starts with no animal.</summary>
    public AnimalRows(Vocabulary vocabulary) => _vocabulary = vocabulary;

    /// <summary>Notes that a column is not there, or the source that would have it: what it says is not known of anyone.</summary>
    public void AddNotKnown(string column) => _notKnown.Add(column);

    /// <summary>Starts what a row says of an animal.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="number">Her number.</param>
    /// <param name="herd">Of which herd the row is; empty where it does not say so.</param>
    public Dictionary<string, string> Begin(RowPlace place, string number, string herd)
    {
        (_place, _number, _herd) = (place, number, herd);
        return new Dictionary<string, string>(StringComparer.Ordinal);
    }

    /// <summary>Ends it.</summary>
    public void End(Dictionary<string, string> said)
    {
        // Of the tag of several animals nobody can tell whose row it is, so what it says is not known of any of them.
        foreach (var number in Unreadable.NumbersIn(_number))
        {
            _notKnownOf.UnionWith(said.Where(one => one.Value.Length > 0).Select(one => (number, one.Key)));
        }

        // Twice in one source is a mistake of that source, and told as one, but for rows of two herds in which she was.
        if (_number.Length == 0 || Unreadable.Is(_number) || !_animals.TryGetValue(_number, out var before) || (before.Place.Source == _place.Source && before.Herd == _herd))
        {
            _rows.Add((_place, said, _number));
            if (!Unreadable.Is(_number))
            {
                _animals.TryAdd(_number, (_place, _herd, said));
            }

            return;
        }

        foreach (var (name, value) in said)
        {
            var first = before.Said.GetValueOrDefault(name, "");
            if (first.Length == 0)
            {
                before.Said[name] = value;
            }
            else if (value.Length > 0 && NameFolding.Fold(first) != NameFolding.Fold(value))
            {
                before.Said[name] = Unreadable.Of(first);
            }
        }
    }

    private bool IsNotKnown(string number, string name) => _notKnown.Contains(name) || (_notKnownOf.Count > 0 && _notKnownOf.Contains((number, name)));

    /// <summary>Adds a row of which nothing but a number can be told.</summary>
    public void AddBroken(RowPlace place, string number) => _rows.Add((place, null, number));

    /// <summary>The rows in the landed form, with a column for whatever any source says.</summary>
    public LandedRows ToRows()
    {
        string[] fixedColumns = ["animal", "born", "sex", "mob", "parity", "parity on"];
        string[] said = [.. _rows.SelectMany(row => row.Said?.Keys.AsEnumerable() ?? []).Concat(_notKnown).Distinct(StringComparer.Ordinal)];
        string[] headings =
        [
            "animal", .. fixedColumns.Skip(1).Where(said.Contains),
            .. _vocabulary.Facts.Select(fact => fact.Name).Append(AnimalColumns.ToldBesides).Where(said.Contains),
        ];
        var rows = new LandedRows(headings);
        foreach (var (place, values, number) in _rows)
        {
            if (values is null)
            {
                rows.AddBroken(place, number);
            }
            else
            {
                rows.Add(place, [number, .. headings.Skip(1).Select(heading => IsNotKnown(number, heading) ? Unreadable.NotThere : values.GetValueOrDefault(heading, ""))]);
            }
        }

        return rows;
    }
}
