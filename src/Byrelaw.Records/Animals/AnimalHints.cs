using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Animals;

/// <summary>
/// What cells of an animal's row tell of beside what they are read as: a fact <c>in calf</c>, a status <c>PREG</c> in a column that nobody reads, a mob <c>Springers</c>. They have no day, so it may have been on any.
/// </summary>
internal sealed class AnimalHints
{
    private static readonly string[] Names = ["pregnancy test", "mating", "transfer", "bull in", "drying off"];

    private readonly List<(int Cell, string Heading, Kind? ByHeading, bool ByCell)> _columns = [];
    private readonly Kind?[] _kinds;
    private readonly FloorSigns _signs;
    private readonly ImmutableArray<LeftOut> _saidNot;
    private readonly int _mob;

    /// <summary>Of the columns of a file.</summary>
    public AnimalHints(AnimalColumns columns, Vocabulary vocabulary, RecordKeeping? keeping)
    {
        _signs = new FloorSigns(vocabulary);
        _kinds = KindsOf(vocabulary);
        _saidNot = keeping?.LeaveOut ?? [];
        _mob = columns.Map["mob"];
        for (var i = 0; i < columns.Map.Unknown.Count; i++)
        {
            Add(columns.Map.Unknown[i], columns.Map.UnknownHeads[i], isText: true, vocabulary);
        }

        if (columns.Map[AnimalColumns.ToldBesides] is var told and >= 0)
        {
            Add(told, AnimalColumns.ToldBesides, isText: true, vocabulary);
        }

        foreach (var fact in vocabulary.Facts.Where(fact => columns.Facts[fact.Id] >= 0 && fact.Type != FactType.Identity))
        {
            Add(columns.Facts[fact.Id], fact.Name, fact.Type is FactType.Text or FactType.OneOf, vocabulary);
        }
    }

    /// <summary>The kinds that a mark of <see cref="Of"/> stands for, by its bit.</summary>
    public static IEnumerable<Kind> KindsIn(int marks, Vocabulary vocabulary) => KindsOf(vocabulary).Where((kind, bit) => kind is not null && (marks & (1 << bit)) != 0)!;

    /// <summary>What a row may tell of, a bit for each kind.</summary>
    public int Of(CsvRows row)
    {
        var marks = 0;
        foreach (var (cell, heading, byHeading, byCell) in _columns)
        {
            if (cell != row.CutCell && row.Cell(cell) is { IsEmpty: false } bytes && (byHeading is not null || bytes.Length <= FloorSigns.LongestCell))
            {
                var text = Encoding.UTF8.GetString(bytes);
                Mark(byCell ? _signs.In(text) : null, heading, text, ref marks);
                Mark(byHeading is not null && !FloorHeadings.SaysNone(text) ? byHeading : null, heading, text, ref marks);
            }
        }

        if (_mob >= 0 && _mob != row.CutCell && row.Cell(_mob) is { IsEmpty: false } mob)
        {
            var name = Encoding.UTF8.GetString(mob);
            Mark(_signs.InMob(name), "mob", name, ref marks);
        }

        return marks;
    }

    private static Kind?[] KindsOf(Vocabulary vocabulary) => [.. Names.Select(vocabulary.FindKind)];

    private void Add(int cell, string heading, bool isText, Vocabulary vocabulary)
    {
        // Of all but tests it is enough that the promise falls: what may have happened since clears nobody.
        var byHeading = FloorHeadings.MayBe(heading, vocabulary) is { } kind && kind.Id == _kinds[0]?.Id ? kind : null;
        if (byHeading is not null || (isText && !FloorSigns.IsOfOthers(heading)))
        {
            _columns.Add((cell, heading, byHeading, isText && !FloorSigns.IsOfOthers(heading)));
        }
    }

    private void Mark(Kind? kind, string heading, string text, ref int marks)
    {
        if (kind is not null && !_saidNot.IsSaid(heading, text, kind))
        {
            marks |= 1 << Array.FindIndex(_kinds, one => one?.Id == kind.Id);
        }
    }
}
