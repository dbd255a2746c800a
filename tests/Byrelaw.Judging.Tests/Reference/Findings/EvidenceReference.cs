namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// The records that an answer rests on: what its windows count from, on the day that it was last on record; all that was looked at in the days as
/// they are on record; facts that are known, hers and those that limits are shares of.
/// </summary>
public sealed class EvidenceReference(Knowledge knowledge, Moment moment)
{
    private const string Unsettled = "result not known";

    private AnimalAsRead Animal => knowledge.Farm.Animals[moment.Animal];

    /// <summary>Each record once, however often it is looked at. File names are not told.</summary>
    public HashSet<Evidence> Of(Condition condition) => [.. condition switch
    {
        TimeSinceCondition since => Last(since.Kinds),
        CountCondition count => Anchors(count.Windows).Concat(Stretch(count.Windows) is { } widest ? Counted(count, widest) : []),
        ApartCondition apart => Of(ApartReference.Counting(apart)),
        TestCondition test => Anchors(test.Windows).Concat(Stretch(test.Windows) is { } widest ? OfLatestDay(In(test.Test, widest)) : []),
        MeasuredCondition measured => Anchors(measured.Windows).Concat(Stretch(measured.Windows) is { } widest ? Measured(measured, widest) : []),
        SeriesCondition series => Anchors(series.Windows).Concat(series.Test is { } limits && Stretch(series.Windows) is not null ? Limits(limits) : [])
            .Concat(Stretch(series.Windows) is { } widest ? SeriesReference.Looked.At(series, widest, knowledge, moment).Rows.Select(Entry) : []),
        MobMeasuredCondition or MobCountCondition => OfTheMob(condition),
        SpellCondition spell => Anchors(spell.Windows).Concat(Stretch(spell.Windows) is { } widest ? OfSpell(spell.Spell, spell.Windows.IsEmpty ? moment.Day : widest.To) : []),
        AgeCondition => Animal.BornFirst is { } first && Animal.BornLast is { } last
            ? [Fact("born", first == last ? Iso(first) : $"{Iso(first)} to {Iso(last)}")] : [],
        ParityCondition => (Animal.Parity is { } parity ? new[] { Fact("parity", Text(parity, null)) } : [])
            .Concat(Animal is { Parity: not null, SaysParityOn: true, ParityOn: { } on } ? [Fact("parity on", Iso(on))] : [])
            .Concat(knowledge.Rulebook.Vocabulary.Calving is { } calving ? UpTo(moment.Day, (EventKind)calving) : []),
        FactNumberCondition number => Known(number.Fact).Concat(Animal.Facts[number.Fact.Id].IsKnown ? Limits(number.Test) : []),
        FactTextCondition text => Known(text.Fact),
        FactDateCondition date => Known(date.Fact),
        RecordedCondition recorded => Known(recorded.Fact),
        InMobCondition => InMobReference.Says(knowledge, moment) is { } says ? [says] : [],
        StandingCondition standing => Known(standing.Fact),
        _ => [],
    }];

    private Stretch? Stretch(IReadOnlyList<Window> windows) =>
        knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict)?.MinBy(stretch => (stretch.From, stretch.NotOf.Count));

    private IEnumerable<Evidence> Anchors(IReadOnlyList<Window> windows) => windows.SelectMany(window => window switch
    {
        SinceLast since => Last(since.Kinds),
        FromAfterLast from => Last(from.Kinds),
        BeforeDay { Day.Date: null } before => Last(before.Day.Last),
        DaysAfter { Day.Date: null } after => Last(after.Day.Last),
        _ => [],
    });

    private IEnumerable<Evidence> Last(IReadOnlyList<Kind> kinds) =>
        knowledge.Anchors.Last(kinds, moment.Animal, moment.Day, moment.Strict) is { Never: false, Recorded: { } day }
            ? kinds.SelectMany(Hers).Where(row => row.Day == day).Select(Entry)
            : [];

    /// <summary>One kind on one day counts once, from however many sources: the first that says so.</summary>
    private IEnumerable<Happening> Hers(Kind kind) =>
        kind is EventKind ? knowledge.Farm.Of(moment.Animal, kind).DistinctBy(row => row.Day) : knowledge.Farm.Of(moment.Animal, kind);

    private IEnumerable<Happening> In(Kind kind, Stretch stretch) => Hers(kind).Where(row => stretch.Holds(kind, row.Day));

    /// <summary>Of a test, what counts or might.</summary>
    private IEnumerable<Evidence> Counted(CountCondition condition, Stretch widest) => condition.Counted.SelectMany(counted =>
        In(counted.Kind, widest).Where(row => counted.Kind is not TestKind || row.ResultNotKnown || row.Answer == counted.Answer)).Select(Entry);

    private IEnumerable<Evidence> Measured(MeasuredCondition condition, Stretch widest)
    {
        var rows = In(condition.Measure, widest);
        return Limits(condition.Test).Concat(condition.Aggregate == Aggregate.Latest ? OfLatestDay(rows) : rows.Select(Entry));
    }

    private IEnumerable<Evidence> OfLatestDay(IEnumerable<Happening> rows)
    {
        var all = rows.ToList();
        return all.Where(row => row.Day == all[^1].Day).Select(Entry);
    }

    /// <summary>Rows of her own, and ends of her mob's. What makes the company of her mob is told beside, and not compared.</summary>
    private IEnumerable<Evidence> OfSpell(Spell spell, int day) =>
        knowledge.Farm.Of(moment.Animal, spell.From).Where(row => !row.OfGroup).DistinctBy(row => row.Day).Concat(Hers(spell.Until)).Where(row => row.Day <= day).Select(Entry);

    private IEnumerable<Evidence> UpTo(int day, params EventKind[] kinds) =>
        kinds.SelectMany(Hers).Where(row => row.Day <= day).Select(Entry);

    private IEnumerable<Evidence> OfTheMob(Condition condition)
    {
        if (knowledge.Farm.Mobs.At(moment.Animal, moment.Day) is null)
        {
            return [];
        }

        var anchors = Anchors(MobReference.Parts(condition).Windows);
        return MobReference.Sampled(condition, knowledge, moment) is not { } sampled ? anchors : anchors
            .Concat(sampled.Rows.Select(row => new Evidence(row.Measure.Declaration, null, DayNumber.Date(row.Day), Text(row.Values, row.Measure), "", row.Line) { Details = knowledge.Farm.Details.Shown(row.Measure.Declaration, row.Line) }))
            .Concat(sampled.AreEnough ? Limits(MobReference.TestOf(condition)) : []);
    }

    private IEnumerable<Evidence> Limits(NumberTest test) =>
        new[] { test.Low.PercentOf, test.High.PercentOf }.OfType<Fact>().SelectMany(Known);

    private IEnumerable<Evidence> Known(Fact fact) => Animal.Facts[fact.Id] switch
    {
        { Number: { } number } => [Fact(fact.Name, Text(number, fact.Unit?.Symbol))],
        { Text: { } text } => [Fact(fact.Name, text)],
        { Day: { } day } => [Fact(fact.Name, Iso(day))],
        _ => [],
    };

    private Evidence Fact(string name, string value) => new(null, name, null, value, "", PlainFarm.LineOf(Animal.Index));

    private Evidence Entry(Happening row) => new(row.Kind.Declaration, null, DayNumber.Date(row.Day), row.Kind switch
    {
        MeasureKind measure => Text(row.Values, measure),
        TestKind test => row.ResultNotKnown ? Unsettled : test.Answers[row.Answer],
        _ => null,
    }, "", row.Line)
    { Details = knowledge.Farm.Details.Shown(row.Kind.Declaration, row.Line) };

    private static string Text(ValueRange values, MeasureKind measure) => values switch
    {
        { IsAny: true } => Unsettled,
        { Low: { } low, High: { } high } when low == high => Text(low, measure.Unit?.Symbol),
        { High: { } high } when Math.Round(high, 9) != high => $"<{Text(high + ValueRange.Hair, measure.Unit?.Symbol)}",
        _ => $">{Text(values.Low!.Value - ValueRange.Hair, measure.Unit?.Symbol)}",
    };

    private static string Text(decimal value, string? unit) =>
        value.ToString("0.#########", CultureInfo.InvariantCulture) + (unit is null ? "" : $" {unit}");

    private static string Iso(int day) => LocalDatePattern.Iso.Format(DayNumber.Date(day));
}
