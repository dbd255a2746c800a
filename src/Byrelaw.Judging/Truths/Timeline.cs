namespace Byrelaw.Judging.Truths;

/// <summary>A condition's answer over a span of dates: a step function.</summary>
/// <param name="Stretches">In order, without holes; the first starts at the span's first day.</param>
/// <param name="Last">The span's last day, included.</param>
public sealed record Timeline(ImmutableArray<Stretch> Stretches, LocalDate Last)
{
    /// <summary>The span's first day.</summary>
    public LocalDate First => Stretches[0].From;

    /// <summary>The stretch that holds a day of the span.</summary>
    public Stretch At(LocalDate date)
    {
        var i = Stretches.Length - 1;
        while (i > 0 && Stretches[i].From > date)
        {
            i--;
        }

        return Stretches[i];
    }

    /// <summary>The first day after <paramref name="date"/> on which the truth is another than on that day; null for none in the span.</summary>
    public LocalDate? NextChange(LocalDate date)
    {
        var truth = At(date).Truth;
        foreach (var stretch in Stretches)
        {
            if (stretch.From > date && stretch.Truth != truth)
            {
                return stretch.From;
            }
        }

        return null;
    }

    /// <summary>The first day on or after <paramref name="date"/> on which it is true; null for none in the span.</summary>
    public LocalDate? FirstTrue(LocalDate date)
    {
        if (At(date).Truth == Truth.True)
        {
            return date;
        }

        foreach (var stretch in Stretches)
        {
            if (stretch.From > date && stretch.Truth == Truth.True)
            {
                return stretch.From;
            }
        }

        return null;
    }
}

/// <summary>Days on which an answer stays the same.</summary>
/// <param name="From">The first of them.</param>
/// <param name="Truth">The answer, with nothing more happening after the known day.</param>
/// <param name="Expected">It rests on days after the known day: with coverage stopping there it would be another.</param>
public readonly record struct Stretch(LocalDate From, Truth Truth, bool Expected);
