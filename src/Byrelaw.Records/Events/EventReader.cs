namespace Byrelaw.Records.Events;

/// <summary>Reads rows of <c>events.csv</c>. For one thread.</summary>
internal sealed class EventReader
{
    private readonly EventReading _reading;
    private readonly EventColumns _columns;
    private readonly EventStage _stage;
    private readonly KindLookup _kinds;
    private readonly SubjectReader _subjects;
    private readonly ResultReader _results;

    /// <summary>Starts with nothing read.</summary>
    public EventReader(EventReading reading)
    {
        _reading = reading;
        _columns = reading.Columns;
        _stage = new EventStage(reading.Vocabulary);
        _kinds = new KindLookup(reading.Vocabulary, reading.LeaveOut);
        _subjects = new SubjectReader(reading.Animals, reading.Mobs, reading.AnimalsFile);
        _results = new ResultReader(_columns, _stage, _subjects);
    }

    /// <summary>What has been read so far.</summary>
    public EventStage Stage => _stage;

    /// <summary>Reads all rows of a block.</summary>
    public void ReadBlock(LineBlock block)
    {
        using var rows = new CsvRows(block, _reading.File, _columns.Count, ReadBroken);
        while (rows.Read())
        {
            ReadRow(rows);
        }
    }

    private void ReadRow(CsvRows row)
    {
        var hasDay = DateCell.TryRead(row.Cell(_columns.Date), out var day);
        var entry = row.Cell(_columns.Recorded);
        var entered = Day.Start;
        var hasEntry = entry.IsEmpty || DateCell.TryRead(entry, out entered);
        if (entry.IsEmpty || !hasEntry)
        {
            entered = hasDay ? day : Day.Start;
        }

        _stage.LatestEntry = Math.Max(_stage.LatestEntry, entered);
        var kind = _kinds.Find(row.Cell(_columns.Kind));
        if (entered > _reading.KnownOn || kind == KindLookup.LeftOut)
        {
            return;
        }

        var subject = _subjects.Read(row.Cell(_columns.Animal));
        var line = row.Line;
        if (hasDay && hasEntry && kind >= 0 && subject.Sort != SubjectSort.Unreadable)
        {
            if (entered < day)
            {
                _stage.EnteredEarly.Add(line);
            }

            _results.Read(row, _reading.Vocabulary.Kinds[kind], subject, day, line);
        }
        else if (!row.IsBlank)
        {
            ReportHead(row, kind, subject, hasDay, hasEntry);
            _stage.Suspend(subject, _reading.KindOf(kind), hasDay ? day : null, line);
        }
    }

    /// <summary>Says what is wrong with the date, the animal, the kind or the day of entry.</summary>
    private void ReportHead(CsvRows row, int kind, RowSubject subject, bool hasDay, bool hasEntry)
    {
        var text = row.Text();
        if (!hasDay)
        {
            _stage.Problems.Add(row.Cell(_columns.Date).IsEmpty ? RecordDateProblems.NoDate(text, _columns.Date) : RecordDateProblems.NotADate(text, _columns.Date));
        }

        if (subject.Sort == SubjectSort.Unreadable)
        {
            _stage.Problems.Add(_subjects.Problem(text, _columns.Animal));
        }

        if (kind < 0)
        {
            _stage.Problems.Add(row.Cell(_columns.Kind).IsEmpty
                ? KindProblems.NoKind(text, _columns.Kind)
                : KindProblems.Undeclared(text, _columns.Kind, NearestName.OnlyOne(text.Cells[_columns.Kind].Value, KindNames())));
        }

        if (!hasEntry)
        {
            _stage.Problems.Add(RecordDateProblems.NotADate(text, _columns.Recorded));
        }
    }

    /// <summary>Of a broken row, what can be saved narrows down what it might have said.</summary>
    private void ReadBroken(RowText row)
    {
        var date = Encoding.UTF8.GetBytes(row.Saved(_columns.Date) ?? "");
        var hasDay = DateCell.TryRead(date, out var day);
        var hasEntry = DateCell.TryRead(Encoding.UTF8.GetBytes(row.Saved(_columns.Recorded) ?? ""), out var entered);
        var kind = row.Saved(_columns.Kind) is { } name ? _kinds.Find(name) : KindLookup.Undeclared;
        if ((hasEntry ? entered : hasDay ? day : Day.Start) > _reading.KnownOn || kind == KindLookup.LeftOut)
        {
            return;
        }

        _stage.Problems.Add(RowProblems.Of(row, _columns.Count));
        _stage.Suspend(_subjects.Read(Encoding.UTF8.GetBytes(row.Saved(_columns.Animal) ?? "")), _reading.KindOf(kind), hasDay ? day : null, row.Line);
    }

    private IEnumerable<string> KindNames() => _reading.Vocabulary.Kinds.SelectMany(kind => kind.AlsoNames.Prepend(kind.Name));
}
