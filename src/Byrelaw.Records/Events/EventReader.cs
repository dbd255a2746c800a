using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Events;

/// <summary>Reads rows of <c>events.csv</c>. For one thread.</summary>
internal sealed class EventReader
{
    private const string NotDoneKind = "not done";

    // Where more rows than so many are of numbers that nobody listed, it is the list that is wrong, and one of them tells it.
    private const int MostNotListed = 100_000;

    private readonly EventReading _reading;
    private readonly EventColumns _columns;
    private readonly EventStage _stage;
    private readonly KindLookup _kinds;
    private readonly SubjectReader _subjects;
    private readonly ResultReader _results;
    private readonly DetailReader _details;
    private readonly HintReader _hints;
    private readonly HeadProblems _head;
    private readonly BrokenEventReader _broken;

    /// <summary>Starts with nothing read.</summary>
    public EventReader(EventReading reading)
    {
        _reading = reading;
        _columns = reading.Columns;
        _stage = new EventStage(reading.Vocabulary, reading.LeaveOut.Count);
        _kinds = new KindLookup(reading.Vocabulary, reading.LeaveOut);
        _subjects = new SubjectReader(reading.Animals, reading.Mobs, reading.AnimalsFile);
        var others = new MayBeAnother(reading.Vocabulary);
        _results = new ResultReader(reading, _stage, _subjects, others);
        _details = new DetailReader(reading, _stage, others);
        _hints = new HintReader(reading, _stage, others);
        _head = new HeadProblems(reading, _stage, _subjects);
        _broken = new BrokenEventReader(reading, _stage, _kinds, _subjects);
    }

    /// <summary>What has been read so far.</summary>
    public EventStage Stage => _stage;

    /// <summary>Reads all rows of a block.</summary>
    public void ReadBlock(LineBlock block)
    {
        using var rows = new CsvRows(block, _reading.File, _columns.Count, _broken.Read);
        while (rows.Read())
        {
            if (!_reading.WithoutLines.Contains(rows.Line))
            {
                ReadRow(rows);
            }
        }
    }

    private void ReadRow(CsvRows row)
    {
        var cut = row.CutCell;
        var hasDay = DateCell.TryRead(row.Cell(_columns.Date), out var day) && !IsCut(_columns.Date);
        var entry = row.Cell(_columns.Recorded);
        var entered = Day.Start;
        var hasEntry = entry.IsEmpty || (DateCell.TryRead(entry, out entered) && entered <= _reading.Today && !IsCut(_columns.Recorded));
        var days = Day.Start;
        var isSpan = !hasDay && !IsCut(_columns.Date) && DateCell.TryReadSpan(row.Cell(_columns.Date), out day, out days);
        if (entry.IsEmpty || !hasEntry)
        {
            entered = hasDay || isSpan ? day : Day.Start;
        }

        // Of a month or a year nobody knows the day: it moves no day that the records reach. Nor does what a sheet says: it is of that sheet, and of nothing else.
        _stage.LatestEntries.Add((isSpan && (entry.IsEmpty || !hasEntry)) || !row.Cell(_columns.SheetRow).IsEmpty ? Day.Start : entered);
        var kind = IsCut(_columns.Kind) ? KindLookup.Undeclared : _kinds.Find(row.Cell(_columns.Kind));
        if (entered > _reading.KnownOn)
        {
            return;
        }

        if (KindLookup.IsLeftOut(kind))
        {
            _stage.LeftOut[KindLookup.PlaceOfLeftOut(kind)]++;
            return;
        }

        var subject = IsCut(_columns.Animal) ? default : _subjects.Read(row.Cell(_columns.Animal));
        var line = row.Line;
        if (cut >= 0 && !row.IsBlank)
        {
            _stage.Problems.Add(RowProblems.LastCellCut(row.Text(), cut));
            _stage.Doubted.Add((RowDoubt.LastCellCut, new RowInDoubt(subject.AnimalOfGap, hasDay ? day : Day.Start, line)));
        }

        if (kind >= 0 && _reading.Vocabulary.Kinds[kind] is EventKind { IsOfEmbryos: true } ofEmbryos && cut < 0)
        {
            ReadEmbryo(row, ofEmbryos, subject, hasDay ? Day.Date(day) : null);
            return;
        }

        // A label where an animal is meant leaves open whose the row is.
        subject = subject.Sort == SubjectSort.Embryo ? default : subject;
        if (hasDay && hasEntry && kind >= 0 && subject.Sort != SubjectSort.Unreadable)
        {
            if (entered < day)
            {
                _stage.EnteredEarly.Add(line);
            }

            _results.Read(row, _reading.Vocabulary.Kinds[kind], subject, day, line);
            _details.Read(row, _reading.Vocabulary.Kinds[kind], subject, day, line);
            _hints.Read(row, _reading.Vocabulary.Kinds[kind], subject, day, line);
            CloseSheetRow(row, kind, subject, day);
        }
        else if (hasDay && hasEntry && kind == KindLookup.Undeclared && subject.Sort == SubjectSort.Animal && cut < 0 && NotDone(row) is var notDone and >= 0)
        {
            CloseSheetRow(row, notDone, subject, day);
            ReadThawed(row, notDone, subject, day);
        }
        else if (!row.IsBlank)
        {
            _head.Report(row, kind, subject, hasDay, hasEntry);
            _hints.ReadCells(row, _reading.KindOf(kind), subject, hasDay ? day : null, line);
            Doubt(row, kind, subject, (hasDay ? day : null, isSpan ? (day, days) : null), hasEntry);
        }

        bool IsCut(int cell) => cut >= 0 && cut == cell;
    }

    /// <summary>Notes what a row might have said of which the date, the animal, the kind or the day of entry cannot be read.</summary>
    private void Doubt(CsvRows row, int kind, RowSubject subject, (int? Day, (int First, int Last)? Span) on, bool hasEntry)
    {
        var (line, known, cut) = (row.Line, _reading.KindOf(kind), row.CutCell);
        var isUnreadable = subject.Sort == SubjectSort.Unreadable && cut != _columns.Animal;
        if (_reading.IsOfCompany(known) && (cut >= 0 || !row.Cell(_columns.Value).IsEmpty || !row.Cell(_columns.Unit).IsEmpty))
        {
            // As where all else can be read: another mob may stand there.
            DoubtOnItsDays(default, known, on, line);
            return;
        }

        if (isUnreadable && _subjects.Among(row.Cell(_columns.Animal)) is { Length: > 0 } among)
        {
            foreach (var animal in among)
            {
                _stage.Suspend(new RowSubject(SubjectSort.Animal, animal), known, on.Day, line);
            }

            return;
        }

        var isStranger = subject.Sort == SubjectSort.Unreadable && SubjectReader.IsStranger(row.Cell(_columns.Animal));
        if (isUnreadable && isStranger && _stage.NotListed.Count < MostNotListed && !_subjects.HasOtherZeros(row.Cell(_columns.Animal)))
        {
            _stage.NotListed.Add((Encoding.UTF8.GetString(row.Cell(_columns.Animal)), new RowInDoubt(-1, on.Day ?? Day.Start, line)));
        }

        if (subject.Sort == SubjectSort.Animal && hasEntry && known is EventKind { Effect: HerdEffect.Leaves } leaving && cut != _columns.Date && DateCell.TryReadUntil(row.Cell(_columns.Date), out var gone))
        {
            Gone(row, leaving, subject, gone);
        }
        else if (subject.Sort == SubjectSort.Animal && known is not null and not EventKind { Effect: not HerdEffect.None } and not EventKind { IsMobMove: true })
        {
            DoubtOnItsDays(subject, known, on, line);
        }
        else
        {
            _stage.Suspend(subject, known, on.Day, line, known is null && cut != _columns.Kind ? _head.Like(row.Cell(_columns.Kind)) : null);
        }

        if (isStranger && known is EventKind { IsMobMove: true } move)
        {
            _stage.MovesOfStrangers.Add(new MobRow(move.Id, cut == _columns.Value && cut >= 0 ? MobStays.NotKnown : _subjects.MobOfStranger(row.Cell(_columns.Value)), on.Day ?? Day.Start, line));
        }
    }

    /// <summary>On its day, or on each day of its month or year.</summary>
    private void DoubtOnItsDays(RowSubject subject, Kind? kind, (int? Day, (int First, int Last)? Span) on, int line)
    {
        if (on.Span is var (first, last))
        {
            _stage.Gaps.Add(new Gap(subject.AnimalOfGap, kind!.Id, first, last, line));
        }
        else
        {
            _stage.Suspend(subject, kind, on.Day, line);
        }
    }

    /// <summary>What happened to an embryo puts nothing of any animal in doubt, whatever is wrong with it.</summary>
    private void ReadThawed(CsvRows row, int kind, RowSubject subject, int day)
    {
        if (_reading.Vocabulary.Kinds[kind] is EventKind { Marks: Marks.Transfer } transfer && Cell(row, transfer, "straw read").Length > 0)
        {
            _stage.Embryos.Add(new EmbryoRow(Cell(row, transfer, "embryo") is { Length: > 0 } label ? label : null, transfer, subject.AnimalOfGap, Day.Date(day), row.Line) { IsNotDone = true });
        }
    }

    /// <summary>What stands under a detail of a kind; empty for nothing.</summary>
    private string Cell(CsvRows row, Kind kind, string detail) =>
        _columns.Details.FirstOrDefault(column => column.DetailOf[kind.Id] is var place and >= 0 && NameFolding.Fold(kind.Details[place].Name) == detail) is { } column ? Encoding.UTF8.GetString(row.Cell(column.Cell)).Trim() : "";

    private void ReadEmbryo(CsvRows row, EventKind kind, RowSubject subject, LocalDate? date)
    {
        if (date is null)
        {
            _stage.Problems.Add(_head.OfDate(row.Text()));
        }

        var isEmbryo = subject.Sort == SubjectSort.Embryo;
        if (!isEmbryo)
        {
            _stage.Problems.Add(EmbryoProblems.NoEmbryo(row.Text(), _columns.Kind));
        }

        _stage.Embryos.Add(new EmbryoRow(isEmbryo ? SubjectReader.EmbryoLabel(row.Cell(_columns.Animal)) : null, kind, -1, date, row.Line));
    }

    /// <summary>Of one who left on some day up to one: from that day on she is gone, and before it nobody knows.</summary>
    private void Gone(CsvRows row, EventKind kind, RowSubject subject, int last)
    {
        var first = Math.Max(_reading.Births[subject.Number].BornFirst, CivilDate.DayNumber(CivilDate.FirstYear, 1, 1));
        if (first >= last)
        {
            _stage.Suspend(subject, kind, null, row.Line);
            return;
        }

        _stage.Gaps.Add(new Gap(subject.AnimalOfGap, kind.Id, first, last - 1, row.Line));
        _results.Read(row, kind, subject, last, row.Line);
        _details.Read(row, kind, subject, last, row.Line);
    }

    /// <summary>Notes which row of a sheet an entry is of.</summary>
    private void CloseSheetRow(CsvRows row, int kind, RowSubject subject, int day)
    {
        if (_columns.SheetRow >= 0 && row.CutCell != _columns.SheetRow && Encoding.UTF8.GetString(row.Cell(_columns.SheetRow)).Trim() is { Length: > 0 } named)
        {
            _stage.SheetRows.Add((named, kind, subject.AnimalOfGap, day, row.Line));
        }
    }

    /// <summary>Of a row of the program's own kind <c>not done</c> that names a sheet's row: the kind that was not; less than 0 for any other row.</summary>
    private int NotDone(CsvRows row) => _columns is { SheetRow: >= 0, Value: >= 0 } && !row.Cell(_columns.SheetRow).IsEmpty && NameFolding.Fold(Encoding.UTF8.GetString(row.Cell(_columns.Kind))) == NotDoneKind
        ? _kinds.Find(row.Cell(_columns.Value)) : KindLookup.Undeclared;
}
