namespace Byrelaw.Records.Sources;

/// <summary>Turns the rows of a source with a row for each animal into rows of <c>animals.csv</c>, and what they say happened into rows of <c>events.csv</c>.</summary>
/// <param name="source">The source.</param>
/// <param name="animals">Takes what is said of animals.</param>
/// <param name="events">Takes what happened.</param>
/// <param name="last">Takes of whom it is said that nothing more happened since.</param>
/// <param name="hints">What they tell of besides.</param>
/// <param name="vocabulary">The words.</param>
/// <param name="upTo">The day that the records reach; null where nobody says.</param>
internal sealed class AnimalTranslator(TranslatedSource source, AnimalRows animals, EventRows events, List<HerLast> last, Vocabulary vocabulary, LocalDate? upTo, SourceHints hints)
{
    private readonly SourceColumn[] _kinds = [.. source.Source.Columns.Where(column => column.What is KindTarget && source.Table.Find(column.Heading) >= 0)];

    /// <summary>Adds what is said of animals, from all rows.</summary>
    public void TranslateAnimals(FoundAnimals found)
    {
        foreach (var row in source.Rows)
        {
            var place = new RowPlace(source.Place, row.Number);
            if (source.Flaw(row) is not null)
            {
                animals.AddBroken(place, row[NumberColumn()]);
            }
            else if (!source.IsLeftOut(row))
            {
                TranslateAnimal(row, place, found);
            }
        }
    }

    /// <summary>Adds what happened to them, from all rows.</summary>
    public void TranslateEvents(FoundAnimals found)
    {
        foreach (var row in source.Rows)
        {
            if (source.Flaw(row) is null && !source.IsLeftOut(row))
            {
                foreach (var column in _kinds)
                {
                    TranslateEvent(column, row, found);
                }

                if (source.Column("kind") is { } said)
                {
                    TranslateSaid(said, row, found);
                }
            }
        }
    }

    private int NumberColumn() => source.Column("animal") is { } column ? source.Table.Find(column.Heading) : -1;

    private void TranslateAnimal(SourceRow row, RowPlace place, FoundAnimals found)
    {
        var number = source.Animal(row, found);
        if (source.Column("animal") is not { IsFoundBy: true })
        {
            found.Add(number);
        }

        var said = animals.Begin(place, number, source.HerdOf(row));
        var isOfAnotherHerd = source.IsOfAnotherHerd(row);
        foreach (var column in source.Source.Columns)
        {
            var text = source.Said(column, row);
            switch (column.What)
            {
                case LandedTarget { Column: "born" }:
                    said["born"] = text.Length == 0 ? "" : source.Dates.LandedSpan(text) ?? Unreadable.Of(text);
                    break;
                case LandedTarget { Column: "parity on" }:
                    said["parity on"] = source.Date(text);
                    break;
                case LandedTarget { Column: "parity" }:
                    said["parity"] = text;
                    if ((column.AsAt ?? source.Source.AsAt) is { } day)
                    {
                        said["parity on"] = NodaTime.Text.LocalDatePattern.Iso.Format(day);
                    }

                    break;
                case LandedTarget { Column: not ("animal" or "herd" or "kind") } landed when landed.Column != "mob" || !isOfAnotherHerd:
                    said[landed.Column] = text;
                    break;
                case FactTarget { Fact: var fact }:
                    said[fact.Name] = OfFact(fact, column, text);
                    if (fact.Type is FactType.Identity or FactType.Text)
                    {
                        found.Add(fact, text, number);
                    }

                    break;
            }
        }

        foreach (var every in source.Source.EveryRow)
        {
            if (every.What is LandedTarget { Column: not "herd" } or FactTarget && said.GetValueOrDefault(every.What.Name, "").Length == 0)
            {
                said[every.What.Name] = every.Value;
            }
        }

        // One of them is handed on: a calf that somebody felt before what only comes of one.
        foreach (var (_, told) in hints.In(row).OrderBy(hint => hint.Kind is TestKind ? 0 : 1).Take(1))
        {
            said[AnimalColumns.ToldBesides] = told;
        }

        animals.End(said);
    }

    private string OfFact(Fact fact, SourceColumn column, string text) => Unreadable.Is(text) ? text : fact.Type switch
    {
        FactType.Date => source.Date(text),
        FactType.Number or FactType.Amount when text.Length > 0 && !char.IsAsciiLetter(text[^1]) && column.Unit is { } unit => $"{source.Number(text, column.Times)} {unit}",
        FactType.Number or FactType.Amount => source.Number(text, column.Times),
        _ => text,
    };

    private void TranslateEvent(SourceColumn column, SourceRow row, FoundAnimals found)
    {
        var kind = ((KindTarget)column.What).Kind;
        if (TranslatedSource.IsWithinOneHerd(kind) && source.IsOfAnotherHerd(row))
        {
            return;
        }

        var place = new RowPlace(source.Place, row.Number) { Column = source.Table.Find(column.Heading) };
        var number = source.Animal(row, found);
        if (kind is EventKind)
        {
            var day = source.Said(column, row);
            if (day.Length > 0)
            {
                events.Add(new EventHead(place, source.EventDate(day), number), kind.Name, "", "", Details(kind));
            }

            TellLast(column, row, number, source.Date(day));
            return;
        }

        var cell = source.Cell(column, row, out var meaning);
        var date = DateOf(column, row);
        if (meaning?.Is is IsBlank || (cell.Length == 0 && (date.Length == 0 || column.Dated is not null)))
        {
            TellLast(column, row, number, "");
            return;
        }

        TellLast(column, row, number, date.Length == 0 ? Unreadable.Of("") : date);

        // A result with no day is of any day; a day with no result is one that is not in yet.
        events.Add(
            new EventHead(place, date.Length == 0 ? Unreadable.Of("") : date, number),
            kind.Name, Landings.Value(source, cell, meaning, column.Times), kind is MeasureKind { Unit: not null } ? column.Unit ?? "" : "", Details(kind));
    }

    /// <summary>A column that says what happened to her, on the day that another column holds: <c>kind in "Why gone", dated in "Gone on"</c>.</summary>
    private void TranslateSaid(SourceColumn column, SourceRow row, FoundAnimals found)
    {
        var cell = source.Cell(column, row, out var meaning);
        var (name, date) = (meaning?.Is switch { IsKind said => said.Kind.Name, IsBlank => "", _ => cell }, DateOf(column, row));
        if (meaning?.Is is IsLeftOut || (name.Length == 0 && date.Length == 0))
        {
            return;
        }

        var kind = vocabulary.FindKind(name);
        if (TranslatedSource.IsWithinOneHerd(kind) && source.IsOfAnotherHerd(row))
        {
            return;
        }

        var (place, number) = (new RowPlace(source.Place, row.Number) { Column = source.Table.Find(column.Heading) }, source.Animal(row, found));
        var cells = kind is null ? events.Begin() : Details(kind);
        foreach (var part in meaning?.Parts ?? [])
        {
            cells[events.PlaceOf(part.What.Name)] = part.Value ?? TranslatedSource.Text(row, source.Table.Find(part.Heading!));
        }

        // Whoever is gone was gone by the day of which the sheet is true, whenever it was.
        var noDay = kind is EventKind { Effect: HerdEffect.Leaves } && (source.Source.AsAt ?? source.Source.UpTo ?? upTo) is { } day ? $"../{NodaTime.Text.LocalDatePattern.Iso.Format(day)}" : Unreadable.Of("");
        events.Add(new EventHead(place, date.Length == 0 ? noDay : date, number), name, (meaning?.Is as IsKind)?.Answer ?? "", "", cells);
    }

    /// <summary>The day of what a column holds: one for all, or what another column says.</summary>
    private string DateOf(SourceColumn column, SourceRow row) => column.Dated is { } dated ? NodaTime.Text.LocalDatePattern.Iso.Format(dated)
        : source.EventDate(TranslatedSource.Text(row, source.Table.Find(column.DatedIn!)));

    /// <summary>Of a column of last entries: since when it says that nothing more happened to her.</summary>
    /// <param name="column">The column.</param>
    /// <param name="row">The row.</param>
    /// <param name="number">Her number.</param>
    /// <param name="date">The day of the entry in the landed form; empty for a blank cell.</param>
    private void TellLast(SourceColumn column, SourceRow row, string number, string date)
    {
        if (!column.IsLast || source.Source.AsAt is not { } asAt || number.Length == 0 || Unreadable.Is(number))
        {
            return;
        }

        int? from = date.Length > 0 ? DayOf(date)
            : column.Blank is not { } blank ? null
            : blank.SinceLast is not { } since ? Day.Start
            : _kinds.FirstOrDefault(other => other.IsLast && ((KindTarget)other.What).Kind.Id == since.Id) is { } other ? DayOf(source.Date(source.Said(other, row)))
            : null;
        if (from is { } day && day <= Day.Number(asAt) && !IsTooLongAgo(day, asAt))
        {
            last.Add(new HerLast(number, ((KindTarget)column.What).Kind.Id, day, Day.Number(asAt)));
        }
    }

    /// <summary>A blank that a workbook makes a day is one of 1900 or 1904, and no cow's last.</summary>
    private static bool IsTooLongAgo(int day, LocalDate asAt) => day > Day.Start && day < Day.Number(asAt.PlusYears(-LateProblems.OldestYears));

    private static int? DayOf(string date) => DateCell.TryRead(Encoding.UTF8.GetBytes(date), out var day) ? day : null;

    private string?[] Details(Kind kind)
    {
        var row = events.Begin();
        foreach (var every in source.Source.EveryRow)
        {
            if (every.Kind is { } its && its.Id == kind.Id)
            {
                row[events.PlaceOf(every.What.Name)] = every.Value;
            }
        }

        return row;
    }
}
