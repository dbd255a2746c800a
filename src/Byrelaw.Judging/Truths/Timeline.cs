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
}

/// <summary>Days on which an answer stays the same.</summary>
/// <param name="From">The first of them.</param>
/// <param name="Truth">The answer, with nothing more happening after the known day.</param>
/// <param name="Expected">It rests on days after the known day: with coverage stopping there it would be another.</param>
public readonly record struct Stretch(LocalDate From, Truth Truth, bool Expected);
