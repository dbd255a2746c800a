using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Sources;

/// <summary>
/// What a row of a source tells of in cells that nobody reads: a column without a line, one that a text reads only beside other texts, or a text of the kind column that is left out. Such a row may be a pregnancy test, or a service, too:
/// by what the cell says, or, under a heading such as <c>In calf</c>, by saying anything but no.
/// </summary>
internal sealed class SourceHints
{
    private readonly TranslatedSource _source;
    private readonly ImmutableArray<LeftOut> _saidNot;
    private readonly FloorSigns _signs;
    private readonly Vocabulary _vocabulary;
    private readonly (int Place, string Heading, TestKind? ByHeading, bool ByCell)[] _notRead;

    /// <summary>Of one source.</summary>
    public SourceHints(TranslatedSource source, Vocabulary vocabulary, RecordKeeping keeping)
    {
        (_source, _saidNot, _signs, _vocabulary) = (source, keeping.LeaveOut, new FloorSigns(vocabulary), vocabulary);
        var read = source.Source.Columns.Select(column => column.Heading).Concat(source.Source.Columns.Select(column => column.DatedIn).OfType<string>())
            .Concat(source.Source.RowsLeftOut.Select(row => row.Heading)).Concat(source.Source.HeadingsReadBeside(keeping.Sources)).Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);

        // What the exchange makes of its own words is the program's to know.
        _notRead = source.Source.IsAde ? [] : [.. source.Table.Headings.Select((heading, place) => (place, heading, FloorHeadings.MayBe(heading, vocabulary) as TestKind, !FloorSigns.IsOfOthers(heading)))
            .Where(one => one.heading.Length > 0 && !read.Contains(NameFolding.Fold(one.heading)))];
    }

    /// <summary>The kinds that a row may tell of beside what is read of it, with what says so: a cell, or where only its heading does the kind's name.</summary>
    public IEnumerable<(Kind Kind, string Said)> In(SourceRow row)
    {
        if (_source.Source.IsAde)
        {
            yield break;
        }

        CellMeaning? meaning = null;
        var cell = _source.Column("kind") is { } kinds ? _source.Cell(kinds, row, out meaning) : "";
        foreach (var (place, heading, byHeading, byCell) in _notRead)
        {
            if (IsReadBy(meaning, heading))
            {
                continue;
            }

            if (byCell && Sign(row[place], heading) is { } told)
            {
                yield return (told, row[place]);
            }
            else if (byHeading is not null && !FloorHeadings.SaysNone(row[place]) && !_saidNot.IsSaid(heading, row[place], byHeading))
            {
                yield return (byHeading, byHeading.Name);
            }
        }

        if (meaning is { Is: IsLeftOut } left && !(left.Where is { } where && FloorHeadings.SaysNone(where.Cell)) && Sign(cell, "") is TestKind test)
        {
            yield return (test, cell);
        }

        if (meaning is { Where: { } beside } && !FloorHeadings.SaysNone(beside.Cell) && WithoutIt(meaning) is { } turned && !_saidNot.IsSaid(cell, cell, turned))
        {
            yield return (turned, cell);
        }
    }

    /// <summary>What a text is read as where the other column does not say what turns it into something else, or takes it out: a test or a service by the farm's own word.</summary>
    private Kind? WithoutIt(CellMeaning turned)
    {
        foreach (var other in _source.Column("kind")!.Cells)
        {
            if (other is { Where: null, Is: IsKind { Kind: var kind } } && NameFolding.Fold(other.Cell) == NameFolding.Fold(turned.Cell) && kind.Id != (turned.Is as IsKind)?.Kind.Id && (FloorHeadings.Asks(kind) || FloorHints.Knows(kind)))
            {
                return kind;
            }
        }

        return null;
    }

    /// <summary>The test that a row which the farm leaves out would be, unless it says that none was found; null for none.</summary>
    public TestKind? InLeftOut(SourceRow row)
    {
        if (_source.Column("kind") is { } kinds)
        {
            var cell = _source.Cell(kinds, row, out var meaning);
            return Test(meaning is null ? _vocabulary.FindKind(cell) : (meaning.Is as IsKind)?.Kind, (meaning?.Is as IsKind)?.Answer ?? Value(row));
        }

        if (_source.EveryRow("kind") is { } every)
        {
            return Test(_vocabulary.FindKind(every), Value(row));
        }

        foreach (var column in _source.Source.Columns)
        {
            if (column.What is KindTarget { Kind: TestKind test } && FloorHeadings.Asks(test) && _source.Cell(column, row, out var meaning) is { Length: > 0 } cell
                && !FloorHeadings.SaysNone(Landings.Value(_source, cell, meaning, column.Times)) && !IsSaidOfLeftOut(test))
            {
                return test;
            }
        }

        return null;
    }

    private TestKind? Test(Kind? kind, string answer) => kind is TestKind test && FloorHeadings.Asks(test) && !(answer.Length > 0 && FloorHeadings.SaysNone(answer)) && !IsSaidOfLeftOut(test) ? test : null;

    private string Value(SourceRow row) => _source.Column("value") is { } values ? Landings.Value(_source, _source.Cell(values, row, out var meaning), meaning, values.Times) : "";

    private bool IsSaidOfLeftOut(Kind kind) => _source.Source.RowsLeftOut.Any(row => _saidNot.IsSaid(row.Heading, row.Cell, kind));

    /// <summary>Whether the text of the row's kind says what stands in a column.</summary>
    private static bool IsReadBy(CellMeaning? meaning, string heading) => meaning is not null
        && (meaning.Parts.Any(part => part.Heading is { } its && NameFolding.Fold(its) == NameFolding.Fold(heading)) || (meaning.Where is { } where && NameFolding.Fold(where.Heading) == NameFolding.Fold(heading)));

    private Kind? Sign(string cell, string heading) =>
        _signs.In(cell) is { } kind && !_saidNot.IsSaid(heading, cell, kind) ? kind : null;
}
