namespace Byrelaw.Reporting.Words;

/// <summary>A timeline as sentences, for those who cannot see the picture.</summary>
public static class TimelineWords
{
    /// <summary>Such as <c>no until 1 November 2026; yes from 2 November 2026</c>.</summary>
    public static string Of(Timeline timeline)
    {
        var runs = Merge(timeline);
        return string.Join("; ", runs.Select((run, i) =>
        {
            var word = run.Truth switch { Truth.True => "yes", Truth.False => "no", _ => "not known" };
            return (i == 0, i == runs.Count - 1) switch
            {
                (true, true) => $"{word} throughout",
                (true, false) => $"{word} until {Dates.Long(run.To)}",
                (false, true) => $"{word} from {Dates.Long(run.From)}",
                _ => $"{word} from {Dates.Long(run.From)} to {Dates.Long(run.To)}",
            };
        }));
    }

    /// <summary>Stretches of one answer, whether or not they rest on days to come.</summary>
    private static List<(Truth Truth, LocalDate From, LocalDate To)> Merge(Timeline timeline)
    {
        var runs = new List<(Truth Truth, LocalDate From, LocalDate To)>();
        for (var i = 0; i < timeline.Stretches.Length; i++)
        {
            var stretch = timeline.Stretches[i];
            var to = i + 1 < timeline.Stretches.Length ? timeline.Stretches[i + 1].From.PlusDays(-1) : timeline.Last;
            if (runs.Count > 0 && runs[^1].Truth == stretch.Truth)
            {
                runs[^1] = runs[^1] with { To = to };
            }
            else
            {
                runs.Add((stretch.Truth, stretch.From, to));
            }
        }

        return runs;
    }
}
