namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "`if not known pass` passes only what is not there: not on record, not promised, blank. Where any part that is not known owes it to a row that
/// cannot be read (hers, or one that may be hers), a pending, blank, undeclared, `&lt;` or `&gt;` result, results of one day that differ, a contradiction,
/// a mob's row that may be hers or a cell that cannot be read, the rule stays not known."
/// </summary>
/// <remarks>"Or it stands in the window that is looked at, beside what is not there." The widest window that there may be is looked at.</remarks>
public sealed class Barred(Knowledge knowledge, int animal, int day)
{
    private AnimalAsRead Her => knowledge.Farm.Animals[animal];

    private EventKind? Calving => knowledge.Rulebook.Vocabulary.Calving;

    /// <summary>Of a condition that is neither a list nor a name, and not known.</summary>
    public bool Is(Condition leaf) => Her.BirthUnreadable || new ConditionParts(leaf).Facts.Any(fact => IsUnreadable(Her.Facts[fact.Id])) || leaf switch
    {
        AgeCondition => Her.BornFirst is not null,
        ParityCondition => OfSort(),
        TimeSinceCondition since => After(since.Kinds),
        CountCondition count => Anchors(count.Windows) || IsOverrun(count) || count.Counted.Select(counted => counted.Kind).Any(kind => In(count.Windows, kind, isCounted: true)),
        ApartCondition apart => Is(ApartReference.Counting(apart)),
        TestCondition test => Anchors(test.Windows) || In(test.Windows, test.Test, isCounted: false),
        MeasuredCondition measured => Anchors(measured.Windows) || In(measured.Windows, measured.Measure, isCounted: false),
        SeriesCondition series => Anchors(series.Windows) || In(series.Windows, series.Of, isCounted: false),
        MobMeasuredCondition mob => Anchors(mob.Windows) || OfTheMob(mob.Windows, mob.Measure),
        MobCountCondition mob => Anchors(mob.Windows) || OfTheMob(mob.Windows, mob.Measure),
        SpellCondition spell => Anchors(spell.Windows) || OfAnyBull(spell.Spell),
        InMobCondition mob => OfItsMob(mob),
        FactTextCondition text => IsUnforeseen(text, Her),
        StandingCondition standing => OfAnyStanding(standing.Fact),
        _ => false,
    };

    /// <summary>Whether her value is one that the condition's file does not see.</summary>
    public static bool IsUnforeseen(FactTextCondition condition, AnimalAsRead her) =>
        her.Facts[condition.Fact.Id].Text is { } value && condition.Doubted.Any(doubted => NameFolding.Fold(doubted) == NameFolding.Fold(value));

    /// <summary>Of whether she is a cow or a heifer.</summary>
    public bool OfSort() =>
        Her.BirthUnreadable || Her.ParityUnreadable || Her is { Parity: not null, ParityOn: null }
        || (Her is { Parity: { } parity, ParityOn: { } on } && Calvings.Sure(knowledge, animal, on) > parity)
        || knowledge.Coverage.ParityIsDoubted(animal)
        || (Calving is { } calving && MayBe(calving, knowledge.Coverage.Dawn, Her.Parity is null ? day : Math.Max(day, Her.ParityOn ?? day)));

    /// <summary>Whether what came last may be another for something bad.</summary>
    private bool Anchors(IEnumerable<Window> windows) => windows.Any(window => window switch
    {
        SinceLast since => After(since.Kinds),
        FromAfterLast from => After(from.Kinds),
        FromAfterSpell from => OfAnyBull(from.Spell),
        BeforeDay { Day.Date: null } before => After(before.Day.Last),
        DaysAfter { Day.Date: null } days => After(days.Day.Last),
        _ => false,
    });

    private bool After(IReadOnlyList<Kind> kinds)
    {
        var last = kinds.SelectMany(kind => knowledge.Farm.Of(animal, kind)).Where(row => row.Day <= day).Select(row => row.Day + 1).DefaultIfEmpty(knowledge.Coverage.Dawn).Max();
        return kinds.Any(kind => MayBe(kind, last, day) || Contradicted(kind, last, day));
    }

    private bool In(IReadOnlyList<Window> windows, Kind kind, bool isCounted)
    {
        var stretches = Stretches(windows);
        var (from, to) = (stretches.Min(stretch => stretch.FromFor(kind)), stretches.Max(stretch => stretch.To));
        return MayBe(kind, from, to) || IsUncertain(knowledge.Farm.Of(animal, kind).Where(row => row.Day >= from && row.Day <= to)) || (isCounted && Contradicted(kind, from, to));
    }

    /// <summary>"Nor where more stand on record than are allowed, in the widest window that there may be."</summary>
    private bool IsOverrun(CountCondition count)
    {
        var (stretches, found) = (Stretches(count.Windows), 0);
        foreach (var kind in count.Counted.GroupBy(counted => counted.Kind.Id))
        {
            var (from, to) = (stretches.Min(stretch => stretch.FromFor(kind.First().Kind)), stretches.Max(stretch => stretch.To));
            var rows = knowledge.Farm.Of(animal, kind.First().Kind).Where(row => row.Day >= from && row.Day <= to);
            found += (kind.First().Kind is TestKind ? rows.Where(row => kind.Any(counted => counted.Answer == row.Answer)).Select(row => (row.Day, Answer: (int)row.Answer)) : rows.Select(row => (row.Day, Answer: -1))).Distinct().Count();
        }

        return count.Test.Comparison switch
        {
            Comparison.AtMost or Comparison.Exactly => found > count.Test.Low,
            Comparison.LessThan => found >= count.Test.Low,
            Comparison.Between => found > count.Test.High,
            _ => false,
        };
    }

    /// <summary>Anything else's, of anybody, that the results of a mob hang on.</summary>
    private bool OfTheMob(IReadOnlyList<Window> windows, MeasureKind measure)
    {
        var stretches = Stretches(windows);
        var (from, to) = (stretches.Min(stretch => stretch.From), stretches.Max(stretch => stretch.To));
        var move = knowledge.Rulebook.Vocabulary.MobMove;
        return AnyUnread(kind => kind.Id == measure.Id || kind.Id == move.Id)
            || (knowledge.Farm.Mobs.At(animal, day) is null && knowledge.Farm.Of(animal, move).Any(row => row.Day <= day))
            || knowledge.Farm.Animals.Any(one => IsUncertain(knowledge.Farm.Of(one.Index, measure).Where(row => row.Day >= from && row.Day <= to)))
            || knowledge.Farm.MobResults.Any(row => row.Measure.Id == measure.Id && row.Day >= from && row.Day <= to && row.Values.Low != row.Values.High)
            || knowledge.Farm.GroupResults.Any(row => row.Result.Kind.Id == measure.Id && row.Result.Day >= from && row.Result.Day <= to);
    }

    private bool OfItsMob(InMobCondition condition)
    {
        var move = knowledge.Rulebook.Vocabulary.MobMove;
        return AnyUnread(kind => kind.Id == move.Id) || condition.Mobs.Any(mob => !knowledge.Farm.MobNames.Contains(NameFolding.Fold(mob)))
            || (knowledge.Farm.Mobs.At(animal, day) is null && knowledge.Farm.Of(animal, move).Any(row => row.Day <= day));
    }

    private bool OfAnyBull(Spell spell)
    {
        int[] kinds = [spell.From.Id, spell.Until.Id, knowledge.Rulebook.Vocabulary.MobMove.Id];
        return AnyUnread(kind => kinds.Contains(kind.Id)) || knowledge.Farm.Animals.Any(one => one is { IsFemale: not true, IsSteer: false })
            || knowledge.Farm.GroupEvents.Any(row => kinds.Contains(row.Kind.Id) && row.Kind is EventKind { IsMobMove: false });
    }

    private bool OfAnyStanding(Fact fact) =>
        AnyUnread(kind => kind.Id == Calving?.Id || kind is EventKind { Effect: not HerdEffect.None })
        || knowledge.Farm.Animals.Any(one => one is { IsFemale: null } || one.BirthUnreadable || one.ParityUnreadable || one.ParityOn is null
            || IsUnreadable(one.Facts[fact.Id]) || knowledge.Coverage.ParityIsDoubted(one.Index));

    private bool AnyUnread(Func<Kind, bool> which) => knowledge.Farm.Unread.Any(row =>
        (row.Kind is null || which(row.Kind)) && (row.Animal is not { } whose || row.MayBeOf(knowledge.Farm.Animals[whose])));

    private bool MayBe(Kind kind, int from, int to) => knowledge.Farm.Unread.Any(row =>
        row.MayBeOf(Her) && row.MayBeA(kind) && row.MayBeIn(row.IsOnRecord ? from : Math.Max(from, CoverageReference.NeededFrom(Her, kind)), to));

    private bool Contradicted(Kind kind, int from, int to) =>
        kind.Declaration.Id == Calving?.Id && to >= Math.Max(from, CoverageReference.NeededFrom(Her, kind)) && knowledge.Coverage.ParityIsDoubted(animal);

    private static bool IsUncertain(IEnumerable<Happening> rows)
    {
        var all = rows.ToList();
        return all.Exists(row => row.ResultNotKnown || (row.Kind is MeasureKind && row.Values.Low != row.Values.High))
            || all.GroupBy(row => row.Day).Any(sameDay => sameDay.Select(row => (row.Answer, row.Values)).Distinct().Skip(1).Any() && sameDay.First().Kind is MeasureKind or TestKind);
    }

    private static bool IsUnreadable(FactCell cell) => !cell.IsKnown && !cell.IsBlank;

    private List<Stretch> Stretches(IReadOnlyList<Window> windows) =>
        [.. knowledge.Windows.Possible(windows, animal, day, strict: false) ?? [new Stretch(knowledge.Coverage.Dawn, day, [])]];
}
