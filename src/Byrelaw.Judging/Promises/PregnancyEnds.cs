namespace Byrelaw.Judging.Promises;

/// <summary>
/// What ended the pregnancies of each animal: her calvings, her slipped calves, and tests that found none. A calf that is found or slipped later was begotten
/// since, so that no service before is its father. What may be such an end, and cannot be read, counts as one: else a smudge would lend her a father;
/// but for a word that is only spelt like something else.
/// </summary>
internal sealed class PregnancyEnds
{
    // A test does not see a younger calf: as the base rules have it, common practice, no source.
    private const int SeenFromDay = 28;

    private readonly Herd _herd;
    private readonly int[] _kinds;
    private readonly TestKind? _test;
    private readonly int _empty;
    private readonly ILookup<int, Gap> _mayBe;

    public PregnancyEnds(Herd herd)
    {
        _herd = herd;
        _kinds = [.. new Kind?[] { herd.Vocabulary.Calving, herd.Vocabulary.FindKind("abortion") }.OfType<Kind>().Select(kind => kind.Id)];
        _test = herd.Vocabulary.FindKind("pregnancy test") as TestKind;
        _empty = _test?.Answers.IndexOf("empty") ?? -1;
        _mayBe = herd.Coverage.Gaps
            .Where(gap => gap is { Animal: >= 0, IsHint: false, IsOfSheet: false, IsOfDouble: false } && (gap.Kind >= 0 ? IsEnd(gap.Kind) : gap.Like is not { } like || IsEnd(like)))
            .ToLookup(gap => gap.Animal);
    }

    /// <summary>The first day on which a pregnancy may have begun, by the last end before it; <see cref="Day.Start"/> where there is none.</summary>
    /// <param name="animal">Whose.</param>
    /// <param name="begunBy">It had begun by this day.</param>
    /// <param name="day">It was found, or ended, on this day: tests before it that found none say that it is younger.</param>
    public PregnancyBegins Begins(int animal, int begunBy, int day)
    {
        var first = Day.Start;
        foreach (var kind in _kinds)
        {
            foreach (var end in _herd.Runs[kind].DaysOf(animal))
            {
                first = end <= begunBy ? Math.Max(first, end) : first;
            }
        }

        if (_test is not null)
        {
            var run = _herd.Runs[_test.Id];
            for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
            {
                if (run.Days[place] < day && (run.Answers[place] == _empty || run.Answers[place] == KindRun.NotKnown))
                {
                    first = Math.Max(first, run.Days[place] - SeenFromDay + 1);
                }
            }
        }

        var begins = new PregnancyBegins(first, first, 0);
        foreach (var gap in _mayBe[animal])
        {
            var end = gap.From <= begunBy ? Math.Min(gap.To, begunBy)
                : gap.From < day && (gap.Kind < 0 || gap.Kind == _test?.Id) ? Math.Min(gap.To, day - 1) - SeenFromDay + 1
                : Day.Start;
            begins = end > begins.First ? begins with { First = end, Line = gap.Line } : begins;
        }

        return begins;
    }

    private bool IsEnd(int kind) => kind == _test?.Id || _kinds.Contains(kind);
}

/// <summary>When a pregnancy may have begun.</summary>
/// <param name="First">The first day.</param>
/// <param name="ByWhatCanBeRead">The same by rows that can be read alone.</param>
/// <param name="Line">The row that cannot be read, and by which the first is later; 0 for none.</param>
internal readonly record struct PregnancyBegins(int First, int ByWhatCanBeRead, int Line);
