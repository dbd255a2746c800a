namespace Byrelaw.Records.Events;

/// <summary>Reads what a row found: nothing for an event, a mob for a move, an answer, or a measured value. For one thread.</summary>
internal sealed class ResultReader(EventReading reading, EventStage stage, SubjectReader subjects, MayBeAnother others)
{
    private readonly EventColumns _columns = reading.Columns;
    private readonly AnswerLookup _answers = new();
    private readonly MeasureReader _measures = new(reading.Columns, stage.Problems);

    /// <summary>Reads the result of a row whose date, animal and kind are known.</summary>
    public void Read(CsvRows row, Kind kind, RowSubject subject, int day, int line)
    {
        if (row.CutCell is var cut and >= 0 && (cut == _columns.Value || cut == _columns.Unit))
        {
            ReadCut(kind, subject, day, line);
            return;
        }

        switch (kind)
        {
            case MeasureKind measure:
                ReadMeasure(row, measure, subject, day, line);
                break;
            case TestKind test:
                ReadTest(row, test, subject, day, line);
                break;
            case EventKind { IsMobMove: true }:
                ReadMove(row, kind, subject, day, line);
                break;
            default:
                ReadEvent(row, kind, subject, day, line);
                break;
        }
    }

    /// <summary>A row whose result may be cut: a sample stands, its result not known; anything else is in doubt.</summary>
    private void ReadCut(Kind kind, RowSubject subject, int day, int line)
    {
        switch (kind)
        {
            case MeasureKind when subject.Sort == SubjectSort.Animal:
                stage.Measures[kind.Id].Add(new Staged<AllowedRange>(subject.Number, day, line, AllowedRange.NotKnown));
                break;
            case TestKind when subject.Sort == SubjectSort.Animal:
                stage.Tests[kind.Id].Add(new Staged<byte>(subject.Number, day, line, KindRun.NotKnown));
                break;
            case MeasureKind when subject.Sort == SubjectSort.Mob:
                stage.Groups.Add(new GroupRow(kind.Id, day, line, subject.Number, AllowedRange.NotKnown));
                break;
            default:
                stage.Suspend(reading.IsOfCompany(kind) ? default : subject, kind, day, line);
                break;
        }
    }

    private void ReadEvent(CsvRows row, Kind kind, RowSubject subject, int day, int line)
    {
        var isSound = TakesNoUnit(row, kind);
        if (!row.Cell(_columns.Value).IsEmpty)
        {
            var other = others.ByValue(Encoding.UTF8.GetString(row.Cell(_columns.Value)), kind);
            stage.Problems.Add(ValueProblems.ValueOnEvent(row.Text(), _columns.Value, kind, other));
            if (other is not null)
            {
                stage.Hint(subject, other, day, line);
            }

            isSound = false;
        }

        if (!isSound)
        {
            // Where a bull was put, or taken from, may stand there: then it is any mob's.
            stage.Suspend(reading.IsOfCompany(kind) ? default : subject, kind, day, line);
        }
        else if (subject.Sort == SubjectSort.Animal)
        {
            stage.Events[kind.Id].Add(new Staged<Nothing>(subject.Number, day, line, default));
        }
        else
        {
            stage.Groups.Add(new GroupRow(kind.Id, day, line, MobOf(subject)));
        }
    }

    private void ReadMove(CsvRows row, Kind kind, RowSubject subject, int day, int line)
    {
        var isSound = TakesNoUnit(row, kind);
        var name = row.Cell(_columns.Value);
        if (name.IsEmpty || NotKnownCell.Is(name))
        {
            stage.Problems.Add(ValueProblems.MoveNowhere(row.Text(), _columns.Value < 0 ? _columns.Kind : _columns.Value));
            isSound = false;
        }

        if (!name.IsEmpty && others.ByMob(Encoding.UTF8.GetString(name)) is { } other)
        {
            stage.Hint(subject, other, day, line);
        }

        if (!isSound)
        {
            stage.Suspend(subject, kind, day, line);
        }
        else if (subject.Sort == SubjectSort.Animal)
        {
            stage.Moves.Add(new Staged<int>(subject.Number, day, line, subjects.MobNumber(name)));
        }
        else
        {
            stage.Groups.Add(new GroupRow(kind.Id, day, line, MobOf(subject), Target: subjects.MobNumber(name)));
        }
    }

    private void ReadTest(CsvRows row, TestKind test, RowSubject subject, int day, int line)
    {
        if (!TakesNoUnit(row, test))
        {
            stage.Suspend(subject, test, day, line);
            return;
        }

        var answer = _answers.Find(test, row.Cell(_columns.Value));
        if (answer == AnswerLookup.Undeclared)
        {
            var text = row.Text();
            stage.Problems.Add(ValueProblems.UndeclaredAnswer(
                text, _columns.Value, test, NearestName.OnlyOne(text.Cells[_columns.Value].Value, test.Answers)));
            answer = KindRun.NotKnown;
            HintByValue(row, test, subject, day, line);
        }

        if (subject.Sort == SubjectSort.Animal)
        {
            stage.Tests[test.Id].Add(new Staged<byte>(subject.Number, day, line, (byte)answer));
        }
        else
        {
            stage.NobodysResults.Add(line);
            stage.Groups.Add(new GroupRow(test.Id, day, line, MobOf(subject), Answer: (byte)answer));
        }
    }

    private void ReadMeasure(CsvRows row, MeasureKind measure, RowSubject subject, int day, int line)
    {
        var isSound = _measures.TryRead(row, measure, out var range);
        if (isSound && measure.Plausible is { } plausible && range != AllowedRange.NotKnown)
        {
            range = Plausible(row, measure, plausible, range, new RowInDoubt(subject.AnimalOfGap, day, line));
        }

        if (isSound && _columns.NoteFollowsValue && IsMovedByComma(row))
        {
            range = AllowedRange.NotKnown;
            stage.Problems.Add(ValueProblems.CommaInNumber(row.Text(), _columns.Value));
            stage.Doubted.Add((RowDoubt.CommaInNumber, new RowInDoubt(subject.AnimalOfGap, day, line)));
        }

        if (subject.Sort is SubjectSort.Herd or SubjectSort.Mob)
        {
            if (subject.Sort == SubjectSort.Herd)
            {
                stage.NobodysResults.Add(line);
            }

            // Such a sample whose value cannot be read is a sample with result not known, and nothing more.
            var sample = row.Cell(_columns.Sample);
            stage.Groups.Add(new GroupRow(
                measure.Id, day, line, MobOf(subject), isSound ? range : AllowedRange.NotKnown, Sample: sample.IsEmpty ? null : Encoding.UTF8.GetString(sample)));
        }
        else if (isSound)
        {
            stage.Measures[measure.Id].Add(new Staged<AllowedRange>(subject.Number, day, line, range));
        }
        else
        {
            stage.Suspend(subject, measure, day, line);
            HintByValue(row, measure, subject, day, line);
        }
    }

    /// <summary>Of a result that is none of its kind: ovaries that are <c>pregnant</c>.</summary>
    private void HintByValue(CsvRows row, Kind kind, RowSubject subject, int day, int line)
    {
        if (others.ByValue(Encoding.UTF8.GetString(row.Cell(_columns.Value)), kind) is { } other)
        {
            stage.Hint(subject, other, day, line);
        }
    }

    /// <summary>What of a result can be: nothing of it is known where no cow can have it.</summary>
    private AllowedRange Plausible(CsvRows row, MeasureKind measure, Scale plausible, AllowedRange range, RowInDoubt doubted)
    {
        var can = new AllowedRange(Math.Max(range.Low, plausible.From), Math.Min(range.High, plausible.To));
        if (can.Low <= can.High)
        {
            return can;
        }

        stage.Problems.Add(ValueProblems.Implausible(row.Text(), _columns.Value, measure.Name, plausible, measure.Unit));
        stage.Doubted.Add((RowDoubt.Implausible, doubted));
        return AllowedRange.NotKnown;
    }

    /// <summary>Whether a whole number stands before a note of one or two digits, as <c>4,5</c> does where cells end with commas.</summary>
    private bool IsMovedByComma(CsvRows row)
    {
        var value = row.Cell(_columns.Value);
        var note = row.Cell(_columns.Note);
        return note.Length is 1 or 2 && !value.IsEmpty && !note.ContainsAnyExceptInRange((byte)'0', (byte)'9') && !value.ContainsAnyExceptInRange((byte)'0', (byte)'9');
    }

    private bool TakesNoUnit(CsvRows row, Kind kind)
    {
        var unit = row.Cell(_columns.Unit);
        if (unit.IsEmpty)
        {
            return true;
        }

        stage.Problems.Add(ValueProblems.UnitNotTaken(row.Text(), _columns.Unit, Encoding.UTF8.GetString(unit), kind));
        return false;
    }

    private static int MobOf(RowSubject subject) => subject.Sort == SubjectSort.Mob ? subject.Number : GroupRow.WholeHerd;
}
