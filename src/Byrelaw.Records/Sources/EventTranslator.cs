using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Sources;

/// <summary>Turns the rows of a source with a row for each event into rows of <c>events.csv</c>.</summary>
/// <param name="source">The source.</param>
/// <param name="vocabulary">The words.</param>
/// <param name="animals">Finds animals by what identifies them.</param>
/// <param name="rows">Takes the rows.</param>
/// <param name="hints">What they tell of besides.</param>
internal sealed class EventTranslator(TranslatedSource source, Vocabulary vocabulary, FoundAnimals animals, EventRows rows, SourceHints hints)
{
    private readonly SourceColumn[] _kinds = [.. source.Source.Columns.Where(column => column.What is KindTarget && source.Table.Find(column.Heading) >= 0)];
    private readonly bool _isSheetOfTests = source.Column("kind") is null && source.EveryRow("kind") is null && source.Source.Columns.Any(column => column.What is KindTarget { Kind: TestKind });
    private readonly (SourceColumn Column, int Place)[] _details = [.. source.Source.Columns.Where(column => column.What is DetailTarget).Select(column => (column, rows.PlaceOf(column.What.Name)))];
    private readonly (int Kind, int Place, string Value)[] _everyRow = [.. source.Source.EveryRow.Where(every => every.Kind is not null).Select(every => (every.Kind!.Id, rows.PlaceOf(every.What.Name), every.Value))];
    private readonly Dictionary<CellPart, (int Place, int Column)> _parts = new(ReferenceEqualityComparer.Instance);
    private readonly List<(int Kind, string Value)> _read = [];
    private readonly Dictionary<string, Kind?> _kindsNamed = new(StringComparer.Ordinal);
    private readonly int? _date = source.Column("date") is { } date ? source.Table.Find(date.Heading) : null;

    /// <summary>Adds all rows.</summary>
    public void Translate()
    {
        foreach (var row in source.Rows)
        {
            var place = new RowPlace(source.Place, row.Number) { Column = _date };
            if (source.Flaw(row) is not null)
            {
                rows.AddUnreadable(place, null);
            }
            else if (!source.IsLeftOut(row))
            {
                Translate(row, place);
            }
            else if (hints.InLeftOut(row) is { } test)
            {
                // That a calf was found there is no less in doubt for her because the farm passes over the row.
                rows.AddHint(new EventHead(place, source.EventDate(Landed("date", row)), source.Animal(row, animals)), test);
            }
        }
    }

    private void Translate(SourceRow row, RowPlace place)
    {
        _read.Clear();
        var head = new EventHead(place, source.EventDate(Landed("date", row)), source.Animal(row, animals))
        {
            Recorded = source.Date(Landed("recorded", row)),
            Note = Landed("note", row),
            Sample = Landed("sample", row),
            SheetRow = Landed("sheet row", row),
        };
        if (source.Column("kind") is { } kinds)
        {
            OfKindColumn(kinds, row, head);
        }
        else if (source.EveryRow("kind") is { } every)
        {
            Add(head, every, KindNamed(every), Value(row), Landed("unit", row), row, null);
        }

        foreach (var column in _kinds)
        {
            OfOwnColumn(column, row, head);
        }

        foreach (var (told, _) in hints.In(row))
        {
            // What is read of the row as a calf is no doubt of one.
            if (!_read.Exists(one => one.Kind == told.Id && !FloorHeadings.SaysNone(one.Value)))
            {
                rows.AddHint(head, told);
            }
        }

        if (_isSheetOfTests && head.Date.Length > 0 && Array.TrueForAll(_kinds, column => source.Cell(column, row, out var meaning).Length == 0 && meaning is null))
        {
            // Somebody was there that day and wrote down her number: the result is not in yet.
            foreach (var column in _kinds.Where(column => column.What is KindTarget { Kind: TestKind }))
            {
                Add(head with { Place = head.Place with { Column = source.Table.Find(column.Heading) } }, column.What.Name, ((KindTarget)column.What).Kind, "", null, row, null);
            }
        }
    }

    private void OfKindColumn(SourceColumn kinds, SourceRow row, EventHead head)
    {
        var cell = source.Cell(kinds, row, out var meaning);
        switch (meaning?.Is)
        {
            case IsLeftOut:
                break;
            case IsKind said:
                var value = said.Answer ?? Part(meaning, "value", row, meaning.Times) ?? (TakesDetail(meaning) ? "" : Value(row));
                Add(head, said.Kind.Name, said.Kind, value, meaning.Unit ?? Landed("unit", row), row, meaning);
                break;
            default:
                var name = meaning?.Is is IsBlank ? "" : cell;
                Add(head, name, KindNamed(name), Value(row), Landed("unit", row), row, null);
                break;
        }
    }

    /// <summary>A column of one kind: its cells are results, or say that it happened.</summary>
    private void OfOwnColumn(SourceColumn column, SourceRow row, EventHead head)
    {
        var kind = ((KindTarget)column.What).Kind;
        var cell = source.Cell(column, row, out var meaning);
        if (meaning?.Is is IsBlank || (cell.Length == 0 && meaning is null))
        {
            return;
        }

        var value = Landings.Value(source, cell, meaning, column.Times);
        Add(head with { Place = head.Place with { Column = source.Table.Find(column.Heading) } }, kind.Name, kind, kind is EventKind { IsMobMove: false } && meaning?.Is is IsValue ? "" : value, kind is MeasureKind { Unit: not null } ? column.Unit : null, row, meaning);
    }

    private void Add(EventHead head, string kind, Kind? declared, string value, string? unit, SourceRow row, CellMeaning? meaning)
    {
        if (TranslatedSource.IsWithinOneHerd(declared) && source.IsOfAnotherHerd(row))
        {
            return;
        }

        var cells = rows.Begin();
        foreach (var (column, place) in _details)
        {
            var cell = source.Cell(column, row, out var said);
            cells[place] = cell == Unreadable.NotThere && !Has(declared, column.What.Name) ? "" : Landings.Value(source, cell, said, column.Times);
        }

        if (meaning is not null)
        {
            foreach (var part in meaning.Parts)
            {
                if (part.What is DetailTarget)
                {
                    var (place, column) = PlacesOf(part);
                    cells[place] = part.Value ?? TranslatedSource.Text(row, column);
                }
            }
        }

        foreach (var (its, place, every) in _everyRow)
        {
            if (declared is not null && its == declared.Id && string.IsNullOrEmpty(cells[place]))
            {
                cells[place] = every;
            }
        }

        // What a missing column would have said is not known; of what has no value or no unit it would have said nothing.
        value = value == Unreadable.NotThere && declared is EventKind { IsMobMove: false } ? "" : value;
        _read.Add((declared?.Id ?? -1, value));
        unit = unit == Unreadable.NotThere && declared is not (null or MeasureKind { Unit: not null }) ? "" : unit;
        rows.Add(head, kind, value, unit ?? "", cells);
    }

    private static bool Has(Kind? kind, string detail) => kind is null || kind.Details.Any(one => NameFolding.Fold(one.Name) == NameFolding.Fold(detail));

    private (int Place, int Column) PlacesOf(CellPart part)
    {
        if (!_parts.TryGetValue(part, out var places))
        {
            _parts.Add(part, places = (rows.PlaceOf(part.What.Name), part.Heading is { } heading ? source.Table.Find(heading) : -1));
        }

        return places;
    }

    private Kind? KindNamed(string name)
    {
        if (!_kindsNamed.TryGetValue(name, out var kind))
        {
            kind = vocabulary.FindKind(name);
            if (_kindsNamed.Count < 4096)
            {
                _kindsNamed.Add(name, kind);
            }
        }

        return kind;
    }

    private string Value(SourceRow row)
    {
        if (source.Column("value") is not { } column)
        {
            return source.EveryRow("value") ?? "";
        }

        var cell = source.Cell(column, row, out var meaning);
        return Landings.Value(source, cell, meaning, column.Times);
    }

    /// <summary>A part of the row that a text of the kind column names; null where it names none.</summary>
    private string? Part(CellMeaning meaning, string landed, SourceRow row, double times)
    {
        foreach (var part in meaning.Parts)
        {
            if (part.What is LandedTarget target && target.Column == landed)
            {
                return part.Value ?? source.Number(TranslatedSource.Text(row, source.Table.Find(part.Heading!)), times);
            }
        }

        return null;
    }

    /// <summary>Whether the column of values holds a detail of this kind, so that it is no value.</summary>
    private bool TakesDetail(CellMeaning meaning) =>
        source.Column("value") is { } values && meaning.Parts.Any(part => part.What is DetailTarget && part.Heading is { } heading && NameFolding.Fold(heading) == NameFolding.Fold(values.Heading));

    private string Landed(string landed, SourceRow row)
    {
        if (source.Column(landed) is not { } column)
        {
            return source.EveryRow(landed) ?? (landed == "unit" ? source.Column("value")?.Unit ?? "" : "");
        }

        // Nobody judges by a note, a pot's number tells two samples apart and one does for less, and what has no day of entry was entered on its day.
        var said = source.Said(column, row);
        return said == Unreadable.NotThere && landed is "note" or "sample" or "recorded" ? "" : said;
    }
}
