namespace Byrelaw.Checking.MadeUp;

/// <summary>The two files that a farm with these animals would keep (RFC 4180).</summary>
internal sealed class MadeUpFiles
{
    private const int Heading = 1;
    private readonly ImmutableArray<MadeUpAnimal> _animals;
    private readonly ImmutableArray<MadeUpRow> _rows;

    public MadeUpFiles(MadeUpHerd herd, Vocabulary vocabulary)
    {
        _animals = herd.Animals;
        _rows = herd.Rows;
        ImmutableArray<string> facts = [.. vocabulary.Facts.Select(fact => fact.Name)];
        Animals = Write(["animal", "born", "sex", "mob", "parity", .. facts], _animals.Select(animal => AnimalCells(animal, facts)));
        ImmutableArray<string> details = [.. vocabulary.Kinds.SelectMany(kind => kind.Details).Select(detail => detail.Name).Concat(_rows.SelectMany(row => row.Details).Select(detail => detail.Detail)).Distinct(StringComparer.OrdinalIgnoreCase)];
        Events = Write(["date", "animal", "kind", "value", "unit", "sample", .. details], _rows.Select((row, place) => RowCells(row, place, details)));
    }

    /// <summary><c>animals.csv</c>.</summary>
    public byte[] Animals { get; }

    /// <summary><c>events.csv</c>.</summary>
    public byte[] Events { get; }

    /// <summary>Where the row on this line of <c>events.csv</c> is written in the rule file.</summary>
    public int LineOfRow(int line) => line > Heading && line - Heading <= _rows.Length ? _rows[line - Heading - 1].Line : 0;

    /// <summary>The same for a line of <c>animals.csv</c>.</summary>
    public int LineOfAnimal(int line) => line > Heading && line - Heading <= _animals.Length ? _animals[line - Heading - 1].Line : 0;

    private static IEnumerable<string> AnimalCells(MadeUpAnimal animal, ImmutableArray<string> facts) =>
    [
        animal.Number, animal.Born, animal.Sex, animal.Mob, animal.Facts.GetValueOrDefault("parity", ""),
        .. facts.Select(fact => animal.Facts.GetValueOrDefault(fact, "")),
    ];

    /// <summary>Each row is a sample of its own, also where several have one value.</summary>
    private static IEnumerable<string> RowCells(MadeUpRow row, int place, ImmutableArray<string> details) =>
    [
        LocalDatePattern.Iso.Format(row.Date), row.Animal, row.Kind, row.Value, row.Unit, (place + 1).ToString(CultureInfo.InvariantCulture),
        .. details.Select(name => row.Details.FirstOrDefault(detail => string.Equals(detail.Detail, name, StringComparison.OrdinalIgnoreCase)).Value ?? ""),
    ];

    private static byte[] Write(IEnumerable<string> heading, IEnumerable<IEnumerable<string>> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows.Prepend(heading))
        {
            text.AppendJoin(',', row.Select(Cell)).Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
