namespace Byrelaw.Records.Events;

/// <summary>Reads rows of <c>events.csv</c> that fall apart: what can be saved narrows down what one might have said. For one thread.</summary>
internal sealed class BrokenEventReader(EventReading reading, EventStage stage, KindLookup kinds, SubjectReader subjects)
{
    private readonly EventColumns _columns = reading.Columns;

    /// <summary>Reads one.</summary>
    public void Read(RowText row)
    {
        if (reading.WithoutLines.Contains(row.Line))
        {
            return;
        }

        if (BrokenRow.DaysOfTwoInOne(row, _columns.Count, text => kinds.Find(text) >= 0) is { } days)
        {
            SuspendTwoInOne(row, days);
            return;
        }

        var date = Encoding.UTF8.GetBytes(row.Saved(_columns.Date) ?? "");
        var hasDay = DateCell.TryRead(date, out var day);
        var hasEntry = DateCell.TryRead(Encoding.UTF8.GetBytes(row.Saved(_columns.Recorded) ?? ""), out var entered) && entered <= reading.Today;
        var kind = row.Saved(_columns.Kind) is { } name ? kinds.Find(name) : KindLookup.Undeclared;
        if ((hasEntry ? entered : hasDay ? day : Day.Start) > reading.KnownOn)
        {
            return;
        }

        if (BrokenRow.EndsTheFile(row, _columns.Count))
        {
            stage.Problems.Add(row.IsLastWithoutEnd ? RowProblems.FileBreaksOff(row, _columns.Count) : RowProblems.Of(row, _columns.Count));
            stage.Doubted.Add((RowDoubt.FileBreaksOff, new RowInDoubt(-1, Day.Start, row.Line)));
            stage.Gaps.Add(new Gap(-1, -1, Day.Start, Day.End, row.Line));
            stage.LastLine = Math.Min(stage.LastLine, row.Line);
            return;
        }

        if (KindLookup.IsLeftOut(kind))
        {
            return;
        }

        stage.Problems.Add(RowProblems.Of(row, _columns.Count));
        var subject = subjects.Read(Encoding.UTF8.GetBytes(row.Saved(_columns.Animal) ?? ""));
        stage.Suspend(reading.NamesAnyMob(reading.KindOf(kind), row.Saved(_columns.Value)) ? default : subject, reading.KindOf(kind), hasDay ? day : null, row.Line);
    }

    /// <summary>Two rows in one: anything may have happened to anybody on its days.</summary>
    private void SuspendTwoInOne(RowText row, IReadOnlyList<int> days)
    {
        int[] seen = days.Count == 0 ? [Day.Start] : [.. days.Distinct().Where(day => day <= reading.KnownOn)];
        if (seen.Length > 0)
        {
            stage.Problems.Add(RowProblems.TwoInOne(row, _columns.Count));
        }

        foreach (var day in seen)
        {
            stage.Gaps.Add(new Gap(-1, -1, day, day == Day.Start ? Day.End : day, row.Line));
            stage.Doubted.Add((RowDoubt.TwoInOne, new RowInDoubt(-1, day, row.Line)));
        }
    }
}
