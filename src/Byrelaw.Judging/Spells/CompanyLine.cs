namespace Byrelaw.Judging.Spells;

/// <summary>What is so from day to day: false before the first change, then what each change says until the next.</summary>
/// <param name="From">The first days, each after the one before it.</param>
/// <param name="States">What is so from each of them on.</param>
internal sealed record CompanyLine(int[] From, Truth[] States)
{
    /// <summary>Whether it is never so, nor may be.</summary>
    public bool IsNever => From.Length == 0;

    /// <summary>What is so on a day.</summary>
    public Truth At(int day) => Runs.LastAtMost(From, 0, From.Length - 1, day) is var place and >= 0 ? States[place] : Truth.False;

    /// <summary>Looks at days, both included, for the last on which it surely is so, and the last on which it may be.</summary>
    public void Latest(int from, int to, ref int sure, ref int maybe)
    {
        var last = to;
        for (var place = Runs.LastAtMost(From, 0, From.Length - 1, to); place >= 0 && last >= from; place--)
        {
            if (States[place] == Truth.True)
            {
                sure = Math.Max(sure, last);
                return;
            }

            maybe = States[place] == Truth.Unknown ? Math.Max(maybe, last) : maybe;
            last = From[place] - 1;
        }
    }

    /// <summary>Puts stretches together, which may overlap: true where any is, not known where any may be.</summary>
    public static CompanyLine Of(List<SpellStretch> stretches)
    {
        if (stretches.Count == 0)
        {
            return new CompanyLine([], []);
        }

        var edges = new List<(int Day, int Sure, int Maybe)>(2 * stretches.Count);
        foreach (var one in stretches)
        {
            var (sure, maybe) = one.State == Truth.True ? (1, 0) : (0, 1);
            edges.Add((one.From, sure, maybe));
            edges.Add((one.To + 1, -sure, -maybe));
        }

        edges.Sort((a, b) => a.Day.CompareTo(b.Day));
        var days = new List<int>();
        var states = new List<Truth>();
        var (trues, unknowns) = (0, 0);
        for (var i = 0; i < edges.Count; i++)
        {
            trues += edges[i].Sure;
            unknowns += edges[i].Maybe;
            if (i + 1 < edges.Count && edges[i + 1].Day == edges[i].Day)
            {
                continue;
            }

            var state = trues > 0 ? Truth.True : unknowns > 0 ? Truth.Unknown : Truth.False;
            if (state != (states.Count == 0 ? Truth.False : states[^1]))
            {
                days.Add(edges[i].Day);
                states.Add(state);
            }
        }

        return new CompanyLine([.. days], [.. states]);
    }

    /// <summary>One line for all of several: what is the same in each, else not known.</summary>
    public static CompanyLine SameForAll(CompanyLine[] lines)
    {
        var (trues, falses) = (0, lines.Length);
        var edges = new List<(int Day, int Line, Truth State)>();
        for (var line = 0; line < lines.Length; line++)
        {
            for (var place = 0; place < lines[line].From.Length; place++)
            {
                edges.Add((lines[line].From[place], line, lines[line].States[place]));
            }
        }

        edges.Sort((a, b) => a.Day.CompareTo(b.Day));
        var now = new Truth[lines.Length];
        Array.Fill(now, Truth.False);
        var days = new List<int>();
        var states = new List<Truth>();
        for (var i = 0; i < edges.Count; i++)
        {
            var (day, line, next) = edges[i];
            trues += (next == Truth.True ? 1 : 0) - (now[line] == Truth.True ? 1 : 0);
            falses += (next == Truth.False ? 1 : 0) - (now[line] == Truth.False ? 1 : 0);
            now[line] = next;
            if (i + 1 < edges.Count && edges[i + 1].Day == day)
            {
                continue;
            }

            var state = trues == lines.Length ? Truth.True : falses == lines.Length ? Truth.False : Truth.Unknown;
            if (state != (states.Count == 0 ? Truth.False : states[^1]))
            {
                days.Add(day);
                states.Add(state);
            }
        }

        return new CompanyLine([.. days], [.. states]);
    }
}

/// <summary>Days on which a mob has, or may have, the company that makes a spell.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
/// <param name="State">True or not known.</param>
/// <param name="Male">The male in it, or the female whom a row of hers puts in with one; -1 where a row of the mob says so; <see cref="MalesInMobs.WithoutNumber"/>.</param>
/// <param name="Line">That row's line; 0 where a male is in it.</param>
internal readonly record struct SpellStretch(int From, int To, Truth State, int Male = -1, int Line = 0);
