namespace Byrelaw.Records.Reading;

/// <summary>
/// Lays supposed results over a herd without reading its files again: results of measures and tests change nothing but the runs of their kinds. What could change more is
/// left to reading: two results of a day, details that nobody says, an animal that is not in the herd that day.
/// </summary>
public static class ResultsLaidOver
{
    /// <summary>The herd with the results; null where it must be read again.</summary>
    /// <param name="herd">As it is.</param>
    /// <param name="rows">Results of single animals, each with what its details are.</param>
    public static Herd? Over(Herd herd, IReadOnlyList<SupposedRow> rows)
    {
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(rows);
        var (runs, later) = ((KindRun[])herd.Runs.Clone(), false);
        foreach (var kind in rows.GroupBy(row => row.Kind, StringComparer.Ordinal))
        {
            if (herd.Vocabulary.FindKind(kind.Key) is not { } declared || SupposedResult.Of(herd, declared, kind) is not { } results)
            {
                return null;
            }

            later |= results.Exists(result => result.Day > Records.Herds.Day.Number(herd.KnownDay));
            runs[declared.Id] = With(runs[declared.Id], results);
            foreach (var filtered in herd.Vocabulary.Filtered.Where(one => one.Filter!.Of.Id == declared.Id))
            {
                var fits = results.ConvertAll(result => DetailFit.Of(filtered.Filter!, result.Cell, herd.Details));
                if (fits.Contains(Fit.Perhaps))
                {
                    return null;
                }

                runs[filtered.Id] = With(runs[filtered.Id], [.. results.Where((_, i) => fits[i] == Fit.Yes)]);
            }
        }

        return herd.Supposing(runs, later);
    }

    /// <summary>A run with more entries, each in its place.</summary>
    private static KindRun With(KindRun run, List<SupposedResult> results)
    {
        var count = run.Days.Length + results.Count;
        var (starts, days, lines) = (new int[run.Starts.Length], new int[count], new int[count]);
        var (low, high, answers) = (new double[run.Low.Length > 0 || results.Exists(one => one.Answer is null) ? count : 0], new double[run.Low.Length > 0 || results.Exists(one => one.Answer is null) ? count : 0], new byte[run.Answers.Length > 0 || results.Exists(one => one.Answer is not null) ? count : 0]);
        var hers = results.OrderBy(one => one.Animal).ThenBy(one => one.Day).ToList();
        var (to, next) = (0, 0);
        for (var animal = 0; animal + 1 < run.Starts.Length; animal++)
        {
            starts[animal] = to;
            for (var from = run.Starts[animal]; from < run.Starts[animal + 1]; from++)
            {
                while (next < hers.Count && hers[next].Animal == animal && hers[next].Day < run.Days[from])
                {
                    Add(hers[next++]);
                }

                (days[to], lines[to]) = (run.Days[from], run.Lines[from]);
                if (low.Length > 0)
                {
                    (low[to], high[to]) = (run.Low[from], run.High[from]);
                }

                if (answers.Length > 0)
                {
                    answers[to] = run.Answers[from];
                }

                to++;
            }

            while (next < hers.Count && hers[next].Animal == animal)
            {
                Add(hers[next++]);
            }
        }

        starts[^1] = to;
        return new KindRun { Starts = starts, Days = days, Lines = lines, Low = low, High = high, Answers = answers };

        void Add(SupposedResult one)
        {
            (days[to], lines[to]) = (one.Day, 0);
            if (one.Answer is { } answer)
            {
                answers[to] = answer;
            }
            else
            {
                (low[to], high[to]) = (one.Value, one.Value);
            }

            to++;
        }
    }
}
