using System.Text;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Records.Cells;
using Byrelaw.Records.Csv;
using Byrelaw.Records.Herds;
using Byrelaw.Records.Problems;
using Byrelaw.Records.Spellings;

namespace Byrelaw.Records.Events;

/// <summary>Reads rows of <c>events.csv</c>. For one thread.</summary>
internal sealed class EventReader(EventReading reading)
{
    private readonly EventColumns _columns = reading.Columns;
    private readonly EventStage _stage = new(reading.Vocabulary);
    private readonly KindLookup _kinds = new(reading.Vocabulary, reading.LeaveOut);
    private readonly SubjectReader _subjects = new(reading.Animals, reading.Mobs, reading.AnimalsFile);
    private readonly AnswerLookup _answers = new();
    private MeasureReader? _measures;

    /// <summary>What has been read so far.</summary>
    public EventStage Stage => _stage;

    /// <summary>Reads all rows of a block.</summary>
    public void ReadBlock(LineBlock block)
    {
        using var rows = new CsvRows(block, reading.File, _columns.Count, ReadBroken);
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
        if (entered > reading.KnownOn || kind == KindLookup.LeftOut)
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

            ReadResult(row, reading.Vocabulary.Kinds[kind], subject, day, line);
        }
        else if (!row.IsBlank)
        {
            ReportHead(row, kind, subject, hasDay, hasEntry);
            Suspend(subject, kind, hasDay ? day : null, line);
        }
    }

    /// <summary>Says what is wrong with the date, the animal, the kind or the day of entry.</summary>
    private void ReportHead(CsvRows row, int kind, Subject subject, bool hasDay, bool hasEntry)
    {
        var text = row.Text();
        if (!hasDay)
        {
            _stage.Problems.Add(row.Cell(_columns.Date).IsEmpty ? DateProblems.NoDate(text, _columns.Date) : DateProblems.NotADate(text, _columns.Date));
        }

        if (subject.Sort == SubjectSort.Unreadable)
        {
            _stage.Problems.Add(_subjects.Problem(text, _columns.Animal));
        }

        if (kind < 0)
        {
            _stage.Problems.Add(row.Cell(_columns.Kind).IsEmpty
                ? KindProblems.NoKind(text, _columns.Kind)
                : KindProblems.Undeclared(text, _columns.Kind, NearestName.To(text.Cells[_columns.Kind].Value, KindNames())));
        }

        if (!hasEntry)
        {
            _stage.Problems.Add(DateProblems.NotADate(text, _columns.Recorded));
        }
    }

    private void ReadResult(CsvRows row, Kind kind, Subject subject, int day, int line)
    {
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

    private void ReadEvent(CsvRows row, Kind kind, Subject subject, int day, int line)
    {
        var isSound = TakesNoUnit(row, kind);
        if (!row.Cell(_columns.Value).IsEmpty)
        {
            _stage.Problems.Add(ValueProblems.ValueOnEvent(row.Text(), _columns.Value, kind));
            isSound = false;
        }

        if (!isSound)
        {
            Suspend(subject, kind.Id, day, line);
        }
        else if (subject.Sort == SubjectSort.Animal)
        {
            _stage.Events[kind.Id].Add(new Staged<Nothing>(subject.Number, day, line, default));
        }
        else
        {
            _stage.Groups.Add(new GroupRow(kind.Id, day, line, MobOf(subject)));
        }
    }

    private void ReadMove(CsvRows row, Kind kind, Subject subject, int day, int line)
    {
        var isSound = TakesNoUnit(row, kind);
        var name = row.Cell(_columns.Value);
        if (name.IsEmpty)
        {
            _stage.Problems.Add(ValueProblems.MoveNowhere(row.Text(), _columns.Value < 0 ? _columns.Kind : _columns.Value));
            isSound = false;
        }

        if (!isSound)
        {
            Suspend(subject, kind.Id, day, line);
        }
        else if (subject.Sort == SubjectSort.Animal)
        {
            _stage.Moves.Add(new Staged<int>(subject.Number, day, line, _subjects.MobNumber(name)));
        }
        else
        {
            _stage.Groups.Add(new GroupRow(kind.Id, day, line, MobOf(subject), Target: _subjects.MobNumber(name)));
        }
    }

    private void ReadTest(CsvRows row, TestKind test, Subject subject, int day, int line)
    {
        if (!TakesNoUnit(row, test))
        {
            Suspend(subject, test.Id, day, line);
            return;
        }

        var answer = _answers.Find(test, row.Cell(_columns.Value));
        if (answer == AnswerLookup.Undeclared)
        {
            var text = row.Text();
            _stage.Problems.Add(ValueProblems.UndeclaredAnswer(
                text, _columns.Value, test, NearestName.To(text.Cells[_columns.Value].Value, test.Answers)));
            answer = KindRun.NotKnown;
        }

        if (subject.Sort == SubjectSort.Animal)
        {
            _stage.Tests[test.Id].Add(new Staged<byte>(subject.Number, day, line, (byte)answer));
        }
        else
        {
            _stage.NobodysResults.Add(line);
        }
    }

    private void ReadMeasure(CsvRows row, MeasureKind measure, Subject subject, int day, int line)
    {
        _measures ??= new MeasureReader(_columns, _stage.Problems);
        var isSound = _measures.TryRead(row, measure, out var range);
        if (!isSound && subject.Sort != SubjectSort.Animal)
        {
            // A mob's sample whose value cannot be read is a sample with result not known, and nothing more.
            _stage.UnreadableRows++;
        }

        if (subject.Sort == SubjectSort.Herd)
        {
            _stage.NobodysResults.Add(line);
        }
        else if (subject.Sort == SubjectSort.Mob)
        {
            _stage.Groups.Add(new GroupRow(measure.Id, day, line, subject.Number, isSound ? range : ValueRange.NotKnown));
        }
        else if (isSound)
        {
            _stage.Measures[measure.Id].Add(new Staged<ValueRange>(subject.Number, day, line, range));
        }
        else
        {
            Suspend(subject, measure.Id, day, line);
        }
    }

    private bool TakesNoUnit(CsvRows row, Kind kind)
    {
        var unit = row.Cell(_columns.Unit);
        if (unit.IsEmpty)
        {
            return true;
        }

        _stage.Problems.Add(ValueProblems.UnitNotTaken(row.Text(), _columns.Unit, Encoding.UTF8.GetString(unit), kind));
        return false;
    }

    /// <summary>Of a broken row, what can be saved narrows down what it might have said.</summary>
    private void ReadBroken(RowText row)
    {
        var date = Encoding.UTF8.GetBytes(row.Saved(_columns.Date) ?? "");
        var hasDay = DateCell.TryRead(date, out var day);
        var hasEntry = DateCell.TryRead(Encoding.UTF8.GetBytes(row.Saved(_columns.Recorded) ?? ""), out var entered);
        var kind = row.Saved(_columns.Kind) is { } name ? _kinds.Find(name) : KindLookup.Undeclared;
        if ((hasEntry ? entered : hasDay ? day : Day.Start) > reading.KnownOn || kind == KindLookup.LeftOut)
        {
            return;
        }

        _stage.Problems.Add(RowProblems.Of(row, _columns.Count));
        Suspend(_subjects.Read(Encoding.UTF8.GetBytes(row.Saved(_columns.Animal) ?? "")), kind, hasDay ? day : null, row.Line);
    }

    private void Suspend(Subject subject, int kind, int? day, int line)
    {
        _stage.UnreadableRows++;
        var isNobodys = kind >= 0 && reading.Vocabulary.Kinds[kind] switch
        {
            TestKind => subject.Sort is SubjectSort.Mob or SubjectSort.Herd,
            MeasureKind => subject.Sort == SubjectSort.Herd,
            _ => false,
        };
        if (!isNobodys)
        {
            _stage.Gaps.Add(new Gap(subject.AnimalOfGap, kind, day ?? Day.Start, day ?? Day.End, line));
        }
    }

    private static int MobOf(Subject subject) => subject.Sort == SubjectSort.Mob ? subject.Number : GroupRow.WholeHerd;

    private IEnumerable<string> KindNames() => reading.Vocabulary.Kinds.SelectMany(kind => kind.AlsoNames.Prepend(kind.Name));
}
