namespace Byrelaw.Judging.Promises;

/// <summary>What is on record of an animal: entries, answers and spells, and rows that may be any of them.</summary>
internal sealed class EntriesOnRecord(Herd herd)
{
    private readonly Lazy<HerdDays> _days = new(() => new HerdDays(herd));

    /// <summary>The places of her entries of an event, or of her samples with an answer.</summary>
    public IEnumerable<(int Day, int Line)> Of(Counted what, int animal)
    {
        var run = herd.Runs[what.Kind.Id];
        for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
        {
            if (what.Answer < 0 || run.Answers[place] == what.Answer)
            {
                yield return (run.Days[place], run.Lines[place]);
            }
        }
    }

    /// <summary>Whether one stands on one of these days.</summary>
    public bool Any(Counted what, int animal, int from, int to)
    {
        var run = herd.Runs[what.Kind.Id];
        for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
        {
            if (run.Days[place] >= from && run.Days[place] <= to && (what.Answer < 0 || run.Answers[place] == what.Answer))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a spell of hers surely holds one of these days: by rows of her own, or by the company of her mob.</summary>
    public bool Any(Spell spell, int animal, int from, int to) =>
        AnyOfOwn(spell, animal, from, to) || _days.Value.InSpell(spell).Latest(animal, from, to, strict: false, null).Sure >= from;

    private bool AnyOfOwn(Spell spell, int animal, int from, int to)
    {
        var (starts, ends) = (herd.OwnRun(spell.From.Id), herd.Runs[spell.Until.Id]);
        foreach (var start in starts.DaysOf(animal))
        {
            if (start > to)
            {
                return false;
            }

            var end = Day.End;
            foreach (var day in ends.DaysOf(animal))
            {
                if (day >= start)
                {
                    end = day;
                    break;
                }
            }

            if (end >= from)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Samples whose answer is not known: each may be the one that is looked for.</summary>
    public IEnumerable<(int Animal, int Day, int Line)> WithoutAnswer(Counted what)
    {
        if (what.Answer < 0)
        {
            yield break;
        }

        var run = herd.Runs[what.Kind.Id];
        for (var animal = 0; animal < herd.Count; animal++)
        {
            for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
            {
                if (run.Answers[place] == KindRun.NotKnown)
                {
                    yield return (animal, run.Days[place], run.Lines[place]);
                }
            }
        }
    }

    /// <summary>Rows that cannot be read and may be an entry of a kind; each once. An entry of another number is counted there.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="ofAny">Whether rows of no known kind are among them; those that are spelt like some kind are of that one.</param>
    public IEnumerable<Gap> MayBe(Kind kind, bool ofAny) => herd.Coverage.Gaps.Where(gap => !gap.IsOfDouble && (gap.Kind == kind.Id || (gap.Kind < 0 && (gap.Like is { } like ? like == kind.Id : ofAny)))).DistinctBy(gap => (gap.Line, gap.Animal));
}
