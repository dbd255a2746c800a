namespace Byrelaw.Records.Events;

/// <summary>Tells what is wrong with the date, the animal, the kind or the day of entry of a row of <c>events.csv</c>. For one thread.</summary>
internal sealed class HeadProblems(EventReading reading, EventStage stage, SubjectReader subjects)
{
    private const int MostAdvised = 4096;

    private readonly EventColumns _columns = reading.Columns;

    // The same few words stand in most rows whose kind nobody declares, and to look for their likes takes long.
    private readonly Dictionary<string, (string Found, string Help)> _advice = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Found, string Expected, string? Help)> _dates = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Kind?> _like = new(StringComparer.Ordinal);

    /// <summary>All that is wrong.</summary>
    public void Report(CsvRows row, int kind, RowSubject subject, bool hasDay, bool hasEntry)
    {
        var (text, cut) = (row.Text(), row.CutCell);
        if (!hasDay && cut != _columns.Date)
        {
            stage.Problems.Add(OfDate(text));
        }

        if (subject.Sort == SubjectSort.Unreadable && cut != _columns.Animal)
        {
            stage.Problems.Add(subjects.Problem(text, _columns.Animal));
        }

        if (kind < 0 && cut != _columns.Kind)
        {
            stage.Problems.Add(row.Cell(_columns.Kind).IsEmpty
                ? KindProblems.NoKind(text, _columns.Kind)
                : Undeclared(text));
        }

        if (!hasEntry && cut != _columns.Recorded)
        {
            stage.Problems.Add(DateCell.TryRead(row.Cell(_columns.Recorded), out _)
                ? RecordDateProblems.EnteredAfterToday(text, _columns.Recorded)
                : NotADate(text, _columns.Recorded));
        }
    }

    /// <summary>What is wrong with a date that cannot be read.</summary>
    public Diagnostic OfDate(RowText row) => row.Cells[_columns.Date].Value.Length == 0 ? RecordDateProblems.NoDate(row, _columns.Date) : NotADate(row, _columns.Date);

    /// <summary>The kind that a word which nobody declares is spelt like; null for none.</summary>
    public Kind? Like(ReadOnlySpan<byte> word)
    {
        var text = Encoding.UTF8.GetString(word);
        if (!_like.TryGetValue(text, out var like))
        {
            like = NearestName.OnlyOne(text, KindNames()) is { } name ? reading.Vocabulary.FindKind(name) : null;
            if (_like.Count < MostAdvised)
            {
                _like.Add(text, like);
            }
        }

        return like;
    }

    private Diagnostic Undeclared(RowText row)
    {
        var word = row.Cells[_columns.Kind].Value;
        if (!_advice.TryGetValue(word, out var advice))
        {
            advice = KindProblems.OfUndeclared(word, NearestName.OnlyOne(word, KindNames()), KindAdvice.Hinted(word, reading.Vocabulary));
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

    private IEnumerable<string> KindNames() => reading.Vocabulary.Kinds.SelectMany(kind => kind.AlsoNames.Prepend(kind.Name));
}
