namespace Byrelaw.Records.Sources;

/// <summary>Turns the rows of a source with a row for each event into rows of <c>events.csv</c>.</summary>
/// <param name="source">The source.</param>
/// <param name="vocabulary">The words.</param>
/// <param name="animals">Finds animals by what identifies them.</param>
/// <param name="rows">Takes the rows.</param>
internal sealed class EventTranslator(TranslatedSource source, Vocabulary vocabulary, FoundAnimals animals, EventRows rows)
{
    private readonly SourceColumn[] _kinds = [.. source.Source.Columns.Where(column => column.What is KindTarget)];
    private readonly SourceColumn[] _details = [.. source.Source.Columns.Where(column => column.What is DetailTarget)];

    /// <summary>Adds all rows.</summary>
    public void Translate()
    {
        foreach (var row in source.Table.Rows)
        {
            var place = new RowPlace(source.Place, row.Number);
            if (row.Flaw is not null)
            {
                rows.AddUnreadable(place, null);
            }
            else if (!source.IsLeftOut(row))
            {
                Translate(row, place);
            }
        }
    }

    private void Translate(SourceRow row, RowPlace place)
    {
        var head = new EventHead(place, source.Date(Landed("date", row)), source.Animal(row, animals))
        {
            Recorded = source.Date(Landed("recorded", row)),
            Note = Landed("note", row),
            Sample = Landed("sample", row),
        };
        if (source.Column("kind") is { } kinds)
        {
            OfKindColumn(kinds, row, head);
        }
        else if (source.EveryRow("kind") is { } every)
        {
            Add(head, every, Value(row), Landed("unit", row), row, null);
        }

        foreach (var column in _kinds)
        {
            OfOwnColumn(column, row, head);
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
                Add(head, said.Kind.Name, value, meaning.Unit ?? Landed("unit", row), row, meaning);
                break;
            default:
                Add(head, meaning?.Is is IsBlank ? "" : cell, Value(row), Landed("unit", row), row, null);
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
        Add(head, kind.Name, kind is EventKind { IsMobMove: false } && meaning?.Is is IsValue ? "" : value, kind is MeasureKind { Unit: not null } ? column.Unit : null, row, meaning);
    }

    private void Add(EventHead head, string kind, string value, string? unit, SourceRow row, CellMeaning? meaning)
    {
        var details = new Dictionary<string, string>(StringComparer.Ordinal);
        var declared = vocabulary.FindKind(kind);
        foreach (var column in _details)
        {
            var cell = source.Cell(column, row, out var said);
            details[column.What.Name] = Landings.Value(source, cell, said, column.Times);
        }

        foreach (var part in meaning?.Parts ?? [])
        {
            if (part.What is DetailTarget)
            {
                details[part.What.Name] = part.Value ?? TranslatedSource.Text(row, source.Table.Find(part.Heading!));
            }
        }

        foreach (var every in source.Source.EveryRow)
        {
            if (every.Kind is { } its && declared is not null && its.Id == declared.Id && details.GetValueOrDefault(every.What.Name, "").Length == 0)
            {
                details[every.What.Name] = every.Value;
            }
        }

        foreach (var detail in declared?.Details ?? [])
        {
            // Any text could be read as one, so one that cannot be told is none.
            if (detail.Type is FactType.Text or FactType.Identity && Unreadable.Is(details.GetValueOrDefault(detail.Name, "")))
            {
                details[detail.Name] = "";
            }
        }

        rows.Add(head, kind, value, unit ?? "", details);
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

        return source.Said(column, row);
    }
}
