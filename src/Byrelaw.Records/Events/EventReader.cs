using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Events;

/// <summary>Reads rows of <c>events.csv</c>. For one thread.</summary>
internal sealed class EventReader
{
    private const int MostAdvised = 4096;
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

    // The same few words stand in most rows whose kind nobody declares, and to look for their likes takes long.
    private readonly Dictionary<string, (string Found, string Help)> _advice = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Found, string Expected, string? Help)> _dates = new(StringComparer.Ordinal);

    /// <summary>Starts with nothing read.</summary>
    public EventReader(EventReading reading)
    {
        _reading = reading;
        _columns = reading.Columns;
        _stage = new EventStage(reading.Vocabulary);
        _kinds = new KindLookup(reading.Vocabulary, reading.LeaveOut);
        _subjects = new SubjectReader(reading.Animals, reading.Mobs, reading.AnimalsFile);
        var others = new MayBeAnother(reading.Vocabulary);
        _results = new ResultReader(_columns, _stage, _subjects, others, kind => reading.Vocabulary.Spells.Any(spell => spell.WithMaleFrom is not null && (spell.From.Id == kind.Id || spell.Until.Id == kind.Id)));
        _details = new DetailReader(reading, _stage, others);
        _hints = new HintReader(reading, _stage, others);
    }

    /// <summary>What has been read so far.</summary>
    public EventStage Stage => _stage;

    /// <summary>Reads all rows of a block.</summary>
    public void ReadBlock(LineBlock block)
    {
        using var rows = new CsvRows(block, _reading.File, _columns.Count, ReadBroken);
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
        if (entered > _reading.KnownOn || kind == KindLookup.LeftOut)
        {
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
            ReportHead(row, kind, subject, hasDay, hasEntry);
            if (subject.Sort == SubjectSort.Unreadable && !IsCut(_columns.Animal) && _subjects.Among(row.Cell(_columns.Animal)) is { Length: > 0 } among)
            {
                foreach (var animal in among)
                {
                    _stage.Suspend(new RowSubject(SubjectSort.Animal, animal), _reading.KindOf(kind), hasDay ? day : null, line);
                }

                return;
            }

            if (subject.Sort == SubjectSort.Unreadable && !IsCut(_columns.Animal) && SubjectReader.IsStranger(row.Cell(_columns.Animal)) && _stage.NotListed.Count < MostNotListed && !_subjects.HasOtherZeros(row.Cell(_columns.Animal)))
            {
                _stage.NotListed.Add((Encoding.UTF8.GetString(row.Cell(_columns.Animal)), new RowInDoubt(-1, hasDay ? day : Day.Start, line)));
            }

            if (subject.Sort == SubjectSort.Animal && hasEntry && _reading.KindOf(kind) is EventKind { Effect: HerdEffect.Leaves } leaving && !IsCut(_columns.Date) && DateCell.TryReadUntil(row.Cell(_columns.Date), out var gone))
            {
                Gone(row, leaving, subject, gone);
            }
            else if (isSpan && subject.Sort == SubjectSort.Animal && _reading.KindOf(kind) is { } known and not EventKind { Effect: not HerdEffect.None } and not EventKind { IsMobMove: true })
            {
                _stage.Gaps.Add(new Gap(subject.AnimalOfGap, known.Id, day, days, line));
            }
            else
            {
                _stage.Suspend(subject, _reading.KindOf(kind), hasDay ? day : null, line);
            }

            if (subject.Sort == SubjectSort.Unreadable && _reading.KindOf(kind) is EventKind { IsMobMove: true } move && SubjectReader.IsStranger(row.Cell(_columns.Animal)))
            {
                _stage.MovesOfStrangers.Add(new MobRow(move.Id, IsCut(_columns.Value) ? MobStays.NotKnown : _subjects.MobOfStranger(row.Cell(_columns.Value)), hasDay ? day : Day.Start, line));
            }
        }

        bool IsCut(int cell) => cut >= 0 && cut == cell;
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
            _stage.Problems.Add(row.Cell(_columns.Date).IsEmpty ? RecordDateProblems.NoDate(row.Text(), _columns.Date) : NotADate(row.Text(), _columns.Date));
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

    /// <summary>Says what is wrong with the date, the animal, the kind or the day of entry.</summary>
    private void ReportHead(CsvRows row, int kind, RowSubject subject, bool hasDay, bool hasEntry)
    {
        var (text, cut) = (row.Text(), row.CutCell);
        if (!hasDay && cut != _columns.Date)
        {
            _stage.Problems.Add(row.Cell(_columns.Date).IsEmpty ? RecordDateProblems.NoDate(text, _columns.Date) : NotADate(text, _columns.Date));
        }

        if (subject.Sort == SubjectSort.Unreadable && cut != _columns.Animal)
        {
            _stage.Problems.Add(_subjects.Problem(text, _columns.Animal));
        }

        if (kind < 0 && cut != _columns.Kind)
        {
            _stage.Problems.Add(row.Cell(_columns.Kind).IsEmpty
                ? KindProblems.NoKind(text, _columns.Kind)
                : Undeclared(text));
        }

        if (!hasEntry && cut != _columns.Recorded)
        {
            _stage.Problems.Add(DateCell.TryRead(row.Cell(_columns.Recorded), out _)
                ? RecordDateProblems.EnteredAfterToday(text, _columns.Recorded)
                : NotADate(text, _columns.Recorded));
        }
    }

    private Diagnostic Undeclared(RowText row)
    {
        var word = row.Cells[_columns.Kind].Value;
        if (!_advice.TryGetValue(word, out var advice))
        {
            advice = KindProblems.OfUndeclared(word, NearestName.OnlyOne(word, KindNames()), KindAdvice.Hinted(word, _reading.Vocabulary));
            if (_advice.Count < MostAdvised)
            {
                _advice.Add(word, advice);
            }
        }

        return KindProblems.Undeclared(row, _columns.Kind, advice);
    }

    private Diagnostic NotADate(RowText row, int cell)
    {
        var date = row.Cells[cell].Value;
        if (!_dates.TryGetValue(date, out var said))
        {
            said = RecordDateProblems.OfNoDate(date);
            if (_dates.Count < MostAdvised)
            {
                _dates.Add(date, said);
            }
        }

        return RecordDateProblems.NotADate(row, cell, said);
    }

    /// <summary>Of a broken row, what can be saved narrows down what it might have said.</summary>
    private void ReadBroken(RowText row)
    {
        if (_reading.WithoutLines.Contains(row.Line))
        {
            return;
        }

        if (BrokenRow.DaysOfTwoInOne(row, _columns.Count, text => _kinds.Find(text) >= 0) is { } days)
        {
            SuspendTwoInOne(row, days);
            return;
        }

        var date = Encoding.UTF8.GetBytes(row.Saved(_columns.Date) ?? "");
        var hasDay = DateCell.TryRead(date, out var day);
        var hasEntry = DateCell.TryRead(Encoding.UTF8.GetBytes(row.Saved(_columns.Recorded) ?? ""), out var entered) && entered <= _reading.Today;
        var kind = row.Saved(_columns.Kind) is { } name ? _kinds.Find(name) : KindLookup.Undeclared;
        if ((hasEntry ? entered : hasDay ? day : Day.Start) > _reading.KnownOn)
        {
            return;
        }

        if (BrokenRow.EndsTheFile(row, _columns.Count))
        {
            _stage.Problems.Add(row.IsLastWithoutEnd ? RowProblems.FileBreaksOff(row, _columns.Count) : RowProblems.Of(row, _columns.Count));
            _stage.Doubted.Add((RowDoubt.FileBreaksOff, new RowInDoubt(-1, Day.Start, row.Line)));
            _stage.Gaps.Add(new Gap(-1, -1, Day.Start, Day.End, row.Line));
            _stage.LastLine = Math.Min(_stage.LastLine, row.Line);
            return;
        }

        if (kind == KindLookup.LeftOut)
        {
            return;
        }

        _stage.Problems.Add(RowProblems.Of(row, _columns.Count));
        _stage.Suspend(_subjects.Read(Encoding.UTF8.GetBytes(row.Saved(_columns.Animal) ?? "")), _reading.KindOf(kind), hasDay ? day : null, row.Line);
    }

    /// <summary>Two rows in one: anything may have happened to anybody on its days.</summary>
    private void SuspendTwoInOne(RowText row, IReadOnlyList<int> days)
    {
        int[] seen = days.Count == 0 ? [Day.Start] : [.. days.Distinct().Where(day => day <= _reading.KnownOn)];
        if (seen.Length > 0)
        {
            _stage.Problems.Add(RowProblems.TwoInOne(row, _columns.Count));
        }

        foreach (var day in seen)
        {
            _stage.Gaps.Add(new Gap(-1, -1, day, day == Day.Start ? Day.End : day, row.Line));
            _stage.Doubted.Add((RowDoubt.TwoInOne, new RowInDoubt(-1, day, row.Line)));
        }
    }

    private IEnumerable<string> KindNames() => _reading.Vocabulary.Kinds.SelectMany(kind => kind.AlsoNames.Prepend(kind.Name));
}
