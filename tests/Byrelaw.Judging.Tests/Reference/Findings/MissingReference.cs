namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// What would settle a condition that is not known: the kinds not kept over the days looked at, rows that could not be read and
/// may be of them, results that are not there or not known, facts that are blank. Days before everything on record are no date.
/// </summary>
/// <remarks>Where the days to look at are not known at all, they come first: what else is missing shows once they are known.</remarks>
public sealed class MissingReference(Knowledge knowledge)
{
    /// <summary>For a condition that is not known on that day.</summary>
    public IReadOnlyList<Missing> Of(Condition condition, Moment moment)
    {
        if (condition is ApartCondition apart)
        {
            return Of(ApartReference.Counting(apart), moment);
        }

        var days = new MissingDays(knowledge, moment);
        var animal = knowledge.Farm.Animals[moment.Animal];
        IEnumerable<Missing> missing = condition switch
        {
            TimeSinceCondition since => days.OfAnchor(since.Kinds),
            CountCondition count => days.OfAnchors(count.Windows).Concat(count.Counted.Select(counted => counted.Kind).DistinctBy(kind => kind.Id)
                .SelectMany(kind => Looked(count.Windows, kind, moment, widest => Counted(count, kind, widest, days, moment)))),
            TestCondition test => days.OfAnchors(test.Windows).Concat(
                Looked(test.Windows, test.Test, moment, widest => MissingResults.OfTest(test, widest, Latest(test.Windows, test.Test, moment), knowledge, moment))),
            MeasuredCondition measured => days.OfAnchors(measured.Windows).Concat(
                Looked(measured.Windows, measured.Measure, moment, widest => MissingResults.OfMeasure(measured, widest, Latest(measured.Windows, measured.Measure, moment), knowledge, moment))),
            SeriesCondition series => days.OfAnchors(series.Windows).Concat(Looked(series.Windows, series.Of, moment, widest => MissingResults.OfSeries(series, widest, knowledge, moment))),
            MobMeasuredCondition or MobCountCondition => MobReference.Missing(condition, days, knowledge, moment),
            FactNumberCondition number => Fact(number.Fact, animal).Concat(animal.Facts[number.Fact.Id].IsKnown ? Limits(number.Test, animal) : []),
            FactTextCondition text when Barred.IsUnforeseen(text, animal) => [new Missing(MissingReason.ValueNotForeseen, text.Fact.Name, null, null, SettledBy.Yards)],
            FactTextCondition text => Fact(text.Fact, animal),
            FactDateCondition date => Fact(date.Fact, animal),
            RecordedCondition recorded => Fact(recorded.Fact, animal),
            StandingCondition standing => animal.Facts[standing.Fact.Id].IsKnown
                ? [new Missing(MissingReason.HerdValuesMissing, standing.Fact.Name, null, null, SettledBy.Yards)]
                : Fact(standing.Fact, animal),
            InMobCondition => [new Missing(MissingReason.MobNotKnown, "mob", null, null, SettledBy.Yards)],
            AgeCondition => [Blank("born")],
            ParityCondition => Parity(animal, days, moment),
            _ => [],
        };
        return [.. missing.Distinct()];
    }

    /// <summary>Facts that limits are shares of, and that are not known.</summary>
    public static IEnumerable<Missing> Limits(NumberTest test, AnimalAsRead animal) =>
        new[] { test.Low.PercentOf, test.Comparison == Comparison.Between ? test.High.PercentOf : null }.OfType<Fact>().SelectMany(fact => Fact(fact, animal));

    /// <summary>Whoever can find out: a measure or test says where it is done.</summary>
    public static SettledBy ByWhom(Kind kind) => kind is MeasureKind { InTheYards: false } or TestKind { InTheYards: false } ? SettledBy.LaboratoryOrTime : SettledBy.Yards;

    /// <summary>Which entries of a kind only.</summary>
    public static string FilterOf(Kind kind) => kind.Filter?.Text ?? "";

    private static IEnumerable<Missing> Fact(Fact fact, AnimalAsRead animal) => animal.Facts[fact.Id] switch
    {
        { IsKnown: true } => [],
        { IsBlank: true } => [Blank(fact.Name)],
        _ => [Unreadable(fact.Name, animal)],
    };

    private static Missing Blank(string fact) => new(MissingReason.FactMissing, fact, null, null, SettledBy.Yards);

    private static Missing Unreadable(string fact, AnimalAsRead animal) =>
        new(MissingReason.FactUnreadable, fact, null, null, SettledBy.Yards, PlainFarm.LineOf(animal.Index));

    /// <summary>The cell, unless it is there and nothing speaks against it; calvings between its day and this one; rows that may be one more.</summary>
    private IEnumerable<Missing> Parity(AnimalAsRead animal, MissingDays days, Moment moment)
    {
        var on = animal.Parity is null ? null : animal.ParityOn;
        IEnumerable<Missing> cell = animal.ParityUnreadable ? [Unreadable("parity", animal)]
            : animal.Parity is null ? [Blank("parity")]
            : on is null ? [Unreadable("parity on", animal)]
            : Calvings.Sure(knowledge, moment.Animal, on.Value) > animal.Parity || knowledge.Coverage.ParityIsDoubted(moment.Animal)
                || (on > knowledge.Farm.Known && moment.Day < on) ? [Blank("parity")]
            : [];
        if (knowledge.Rulebook.Vocabulary.Calving is not { } calving)
        {
            return cell;
        }

        if (on is { } its && its != moment.Day)
        {
            cell = cell.Concat(days.NotKept(MissingReason.NotKept, calving, Math.Min(its, moment.Day) + 1, Math.Max(its, moment.Day)));
        }

        return cell.Concat(days.Unread(calving, knowledge.Coverage.Dawn, Math.Max(on ?? moment.Day, moment.Day)));
    }

    private IEnumerable<Missing> Looked(IReadOnlyList<Window> windows, Kind kind, Moment moment, Func<Stretch, IEnumerable<Missing>> look) =>
        knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict) is { } possible ? look(possible.MinBy(stretch => stretch.FromFor(kind))!) : [];

    /// <summary>The first day of the window that begins last.</summary>
    private int Latest(IReadOnlyList<Window> windows, Kind kind, Moment moment) =>
        knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict)!.Max(stretch => stretch.FromFor(kind));

    private IEnumerable<Missing> Counted(CountCondition condition, Kind kind, Stretch widest, MissingDays days, Moment moment)
    {
        var answers = condition.Counted.Where(counted => counted.Kind.Id == kind.Id).Select(counted => counted.Answer).Distinct().ToList();
        var open = knowledge.Farm.Of(moment.Animal, kind)
            .Where(row => kind is TestKind && widest.Holds(kind, row.Day))
            .GroupBy(row => row.Day)
            .Where(day => answers.Exists(answer => day.All(row => row.Answer != answer)));
        return days.NotKept(MissingReason.NotKept, kind, widest.FromFor(kind), widest.To).Concat(open.SelectMany(day => day)
            .Where(row => row.ResultNotKnown)
            .Select(row => new Missing(
                MissingReason.ResultPending, kind.Declaration.Name, DayNumber.Date(row.Day), DayNumber.Date(row.Day), SettledBy.LaboratoryOrTime, row.Line)));
    }
}
