namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What was found, as numbers: of the days as they are on record, with every value that the results allow.</summary>
public sealed class FoundReference(Knowledge knowledge, Moment moment)
{
    private AnimalAsRead Animal => knowledge.Farm.Animals[moment.Animal];

    public Found Of(Condition condition) => condition switch
    {
        TimeSinceCondition since => Since(since),
        CountCondition count => Possible(count.Windows) is { } possible ? Count(count, possible) : new FoundNothing(),
        ApartCondition apart => Possible(apart.Windows) is { } possible ? ApartReference.Found(apart, [.. possible], knowledge, moment) : new FoundNothing(),
        TestCondition test => Possible(test.Windows) is { } possible ? Answers(test, Widest(possible)) : new FoundNothing(),
        MeasuredCondition measured => Possible(measured.Windows) is { } possible ? Measured(measured, Widest(possible)) : new FoundNothing(),
        SeriesCondition series => Possible(series.Windows) is { } possible ? Series(series, SeriesReference.Looked.At(series, Widest(possible), knowledge, moment)) : new FoundNothing(),
        MobMeasuredCondition or MobCountCondition => MobReference.Sampled(condition, knowledge, moment) is { MayHideOne: false } sampled ? OfTheMob(condition, sampled) : new FoundNothing(),
        SpellCondition spell => Spell(spell),
        AgeCondition { Test: var test } => Animal is { BornFirst: { } first, BornLast: { } last } ? new FoundAge(Elapsed(last, test), Elapsed(first, test)) : new FoundNothing(),
        ParityCondition => Number(ParityReference.Between(knowledge, moment), null, null, 1),
        FactNumberCondition { Fact: var fact } => Animal.Facts[fact.Id].Number is { } value ? Number(ValueRange.Exactly(value), fact.Unit?.Symbol, null, 1) : new FoundNothing(),
        FactTextCondition { Fact: var fact } => Text(fact),
        FactDateCondition { Fact: var fact } => Text(fact),
        RecordedCondition { Fact: var fact } => Text(fact),
        InMobCondition => knowledge.Farm.Mobs.At(moment.Animal, moment.Day) is { } mob ? new FoundText(InMobReference.Shown(mob)) : new FoundNothing(),
        StandingCondition standing => Standing(standing),
        _ => throw new ArgumentOutOfRangeException(nameof(condition)),
    };

    private IEnumerable<Stretch>? Possible(IReadOnlyList<Window> windows) => knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict);

    private static Stretch Widest(IEnumerable<Stretch> possible) => possible.MinBy(stretch => (stretch.From, stretch.NotOf.Count))!;

    private Found Since(TimeSinceCondition condition)
    {
        var last = knowledge.Anchors.Last(condition.Kinds, moment.Animal, moment.Day, moment.Strict);
        return last.Never ? new FoundNever()
            : last.Recorded is { } day ? new FoundSince(DayNumber.Date(day), Elapsed(day, condition.Test))
            : new FoundNothing();
    }

    /// <summary>The most whole units that are over by the day of judging.</summary>
    private TimeLength Elapsed(int since, TimeTest test)
    {
        var count = 0;
        while (Sums.After(new TimeLength(count + 1, test.Low.Unit), since) <= moment.Day)
        {
            count++;
        }

        return new TimeLength(count, test.Low.Unit);
    }

    /// <summary>As many as there are wherever her anchor may have been, up to as many as there may be of the widest days.</summary>
    private FoundCount Count(CountCondition condition, IEnumerable<Stretch> possible)
    {
        var counts = possible.Select(stretch => CountReference.Between(condition, stretch, knowledge, moment)).ToList();
        return new FoundCount(counts.Min(count => count.AtLeast), counts.Exists(count => count.AtMost is null) ? null : counts.Max(count => count.AtMost));
    }

    private Found Answers(TestCondition condition, Stretch widest)
    {
        var rows = knowledge.Farm.Of(moment.Animal, condition.Test).Where(row => widest.Holds(condition.Test, row.Day)).ToList();
        return rows.Count == 0 ? new FoundNothing() : new FoundAnswers(
            [.. rows.Where(row => row.Day == rows[^1].Day).Select(row => row.ResultNotKnown ? null : condition.Test.Answers[row.Answer])], DayNumber.Date(rows[^1].Day));
    }

    private Found Measured(MeasuredCondition condition, Stretch widest)
    {
        var samples = SampleReference.In(condition.Measure, widest, knowledge, moment);
        var rows = samples.Recorded;
        if (rows.Count == 0 || (condition.Aggregate == Aggregate.Change && rows[0].Day == rows[^1].Day))
        {
            return new FoundNothing();
        }

        var latest = rows.Where(row => row.Day == rows[^1].Day).ToList();
        var isLatest = condition.Aggregate == Aggregate.Latest;
        var values = isLatest ? latest.Select(row => row.Values) : MeasuredReference.Values(condition, samples);
        return Number(values.Aggregate(ValueRange.Hull), condition.Measure.Unit?.Symbol, rows[^1].Day, isLatest ? latest.Count : rows.Count);
    }

    private static Found Series(SeriesCondition condition, SeriesReference.Looked looked) =>
        !looked.IsEnough ? new FoundNothing()
        : condition.Of is TestKind test ? new FoundAnswers([.. looked.Rows.Select(row => row.ResultNotKnown ? null : test.Answers[row.Answer])], DayNumber.Date(looked.Rows[^1].Day))
        : Number(SeriesReference.Value(condition, looked.Rows), ((MeasureKind)condition.Of).Unit?.Symbol, looked.Rows[^1].Day, looked.Rows.Count);

    private static FoundNumber OfTheMob(Condition condition, MobSampled sampled) => condition switch
    {
        MobMeasuredCondition measured => Number(sampled.AreEnough ? sampled.Together!.Value : ValueRange.Any, measured.Measure.Unit?.Symbol, null, sampled.Sure),
        MobCountCondition count => sampled.AreEnough ? Number(sampled.Together!.Value, null, null, sampled.Sure) : Number(ValueRange.Any, count.Measure.Unit?.Symbol, null, sampled.Sure),
        _ => throw new ArgumentOutOfRangeException(nameof(condition)),
    };

    private Found Spell(SpellCondition condition)
    {
        if (Possible(condition.Windows) is not { } possible)
        {
            return new FoundNothing();
        }

        var (from, to) = condition.Windows.IsEmpty ? (moment.Day, moment.Day) : (Widest(possible).From, Widest(possible).To);
        for (var day = to; day >= Math.Max(from, knowledge.Coverage.Dawn); day--)
        {
            if (knowledge.Spells.OnAny(condition.Spell, moment, day, day) == Truth.True)
            {
                return new FoundSpell(DayNumber.Date(day));
            }
        }

        return new FoundSpell(null);
    }

    private Found Text(Fact fact) => Animal.Facts[fact.Id] switch
    {
        { Text: { } text } => new FoundText(text),
        { Day: { } day } => new FoundText(LocalDatePattern.Iso.Format(DayNumber.Date(day))),
        { Number: { } number } => new FoundText(number.ToString("0.#########", CultureInfo.InvariantCulture) + (fact.Unit is { } unit ? $" {unit.Symbol}" : "")),
        _ => new FoundNothing(),
    };

    private Found Standing(StandingCondition condition)
    {
        if (Animal.Facts[condition.Fact.Id].Number is not { } hers)
        {
            return new FoundNothing();
        }

        var mates = knowledge.Farm.Animals
            .Where(animal => StandingReference.IsMember(condition.Group, knowledge, moment with { Animal = animal.Index }) == Truth.True)
            .Select(animal => animal.Facts[condition.Fact.Id]).ToList();
        return condition.WithValue
            ? new FoundStanding(mates.Count(fact => fact.Number > hers), mates.Count(fact => fact.IsBlank), mates.Count(fact => fact.Number is not null), (double)hers)
            : new FoundStanding(mates.Count(fact => fact.Number > hers), mates.Count(fact => fact.Number is null), mates.Count, (double)hers);
    }

    private static FoundNumber Number(ValueRange values, string? unit, int? day, int from) => new(
        values.Low is { } low ? (double)low : double.NegativeInfinity, values.High is { } high ? (double)high : double.PositiveInfinity,
        unit, day is { } known ? DayNumber.Date(known) : null, from);
}
