namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "<c>of her mob</c> uses results dated while she was in that mob both then and on <c>d</c>: mob rows and members' own, each
/// counted once, the number shown." Mob rows of that mob (each counts as one animal) and results of animals that were in that
/// mob on the result's day (each animal once: her latest day in the window; several results that day: the range over them).
/// Animals whose mob on that day is not known may or may not be counted: the answer holds only if it holds either way.
/// </summary>
public static class MobReference
{
    public static Truth At(Condition condition, Knowledge knowledge, Moment moment)
    {
        var (measure, _) = Parts(condition);
        var mob = knowledge.Farm.Mobs.At(moment.Animal, moment.Day);
        return Kleene.SameForAll(Stretches(condition, knowledge, moment).Select(days =>
            MayHideOne(measure, mob!, days.From, days.To, knowledge)
                ? Truth.Unknown
                : Judge(condition, [.. Choices(measure, mob!, days.From, days.To, knowledge)], knowledge, moment)));
    }

    /// <summary>A sample that the answer rests on has no known result, or a row that may be one cannot be read.</summary>
    public static bool UsesResultNotKnown(Condition condition, Knowledge knowledge, Moment moment)
    {
        var (measure, _) = Parts(condition);
        var mob = knowledge.Farm.Mobs.At(moment.Animal, moment.Day);
        return Stretches(condition, knowledge, moment).Any(days =>
            MayHideOne(measure, mob!, days.From, days.To, knowledge)
            || Choices(measure, mob!, days.From, days.To, knowledge).Any(values => values.Any(value => value.IsAny)));
    }

    /// <summary>Her mob; the days; rows that may be samples of it; animals of it; or what their results leave open.</summary>
    public static IEnumerable<Missing> Missing(Condition condition, MissingDays days, Knowledge knowledge, Moment moment)
    {
        var (measure, windows) = Parts(condition);
        if (knowledge.Farm.Mobs.At(moment.Animal, moment.Day) is not { } mob)
        {
            return [new Missing(MissingReason.MobNotKnown, "mob", null, null, SettledBy.Yards)];
        }

        var (from, to) = Stretches(condition, knowledge, moment).DefaultIfEmpty((1, 0)).MinBy(stretch => stretch.Item1);
        var anchors = days.OfAnchors(windows);
        if (knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict) is null)
        {
            return anchors;
        }

        var hidden = Hidden(measure, mob, from, to, knowledge).Select(row => days.Of(row, measure)).ToList();
        return anchors.Concat(hidden.Count > 0 ? hidden : OfTheMob(condition, measure, mob, from, to, days, knowledge, moment));
    }

    /// <summary>What was sampled of her mob, in the days as they are on record; null where these or her mob are not known.</summary>
    public static MobSampled? Sampled(Condition condition, Knowledge knowledge, Moment moment)
    {
        var (measure, _) = Parts(condition);
        var stretches = Stretches(condition, knowledge, moment).ToList();
        if (stretches.Count == 0)
        {
            return null;
        }

        var mob = knowledge.Farm.Mobs.At(moment.Animal, moment.Day)!;
        var (from, to) = stretches.MinBy(stretch => stretch.From);
        var own = knowledge.Farm.Animals.SelectMany(animal => knowledge.Farm.Of(animal.Index, measure))
            .Where(row => row.Day >= from && row.Day <= to && knowledge.Farm.Mobs.IsIn(row.Animal, mob, row.Day) != Truth.False);
        var rows = knowledge.Farm.MobResults.Where(row => row.Mob == mob && row.Measure == measure && row.Day >= from && row.Day <= to)
            .Concat(own.Select(row => new MobResult(mob, measure, row.Day, row.Line, row.Values)));
        var choices = Choices(measure, mob, from, to, knowledge).ToList();
        var sure = choices.Min(values => values.Count);
        var needed = condition is MobCountCondition mobs ? mobs.FromAtLeast : ((MobMeasuredCondition)condition).FromAtLeast;
        var isHidden = MayHideOne(measure, mob, from, to, knowledge);
        var areEnough = !isHidden && sure >= Math.Max(needed, 1);
        return new MobSampled([.. rows], isHidden, areEnough, sure, areEnough ? choices.Select(values => Value(condition, values, knowledge, moment)).Aggregate(ValueRange.Hull) : null);
    }

    /// <summary>What it comes to, of one set of results.</summary>
    private static ValueRange Value(Condition condition, ImmutableList<ValueRange> values, Knowledge knowledge, Moment moment)
    {
        if (condition is not MobCountCondition count)
        {
            return Together(((MobMeasuredCondition)condition).Aggregate, values);
        }

        var each = values.Select(value => NumberReference.Compare(count.Test, value, knowledge.Farm.Animals[moment.Animal].Facts)).ToList();
        return new ValueRange(each.Count(truth => truth == Truth.True), each.Count(truth => truth != Truth.False));
    }

    private static IEnumerable<Missing> OfTheMob(
        Condition condition, MeasureKind measure, string mob, int from, int to, MissingDays days, Knowledge knowledge, Moment moment)
    {
        var choices = Choices(measure, mob, from, to, knowledge).ToImmutableList();
        var (needed, test) = (condition is MobCountCondition count ? count.FromAtLeast : ((MobMeasuredCondition)condition).FromAtLeast, TestOf(condition));
        needed = Math.Max(needed, 1) - choices.Min(values => values.Count);
        if (needed > 0)
        {
            return [new Missing(MissingReason.TooFewOfTheMob, measure.Declaration.Name, days.Date(from), days.Date(to), MissingReference.ByWhom(measure), 0, needed) { Filter = MissingReference.FilterOf(measure) }];
        }

        var limits = MissingReference.Limits(test, knowledge.Farm.Animals[moment.Animal]).ToList();
        if (limits.Count > 0 || Judge(condition, choices, knowledge, moment) != Truth.Unknown)
        {
            return limits;
        }

        var open = Open(condition, measure, mob, from, to, knowledge, moment).ToList();
        return open.Count > 0 ? open
            : [new Missing(MissingReason.NoResult, measure.Declaration.Name, days.Date(from), days.Date(to), MissingReference.ByWhom(measure)) { Filter = MissingReference.FilterOf(measure) }];
    }

    /// <summary>"What settles it is a result that is awaited, and no new one of somebody else": of each animal that surely counts the results of her latest day, and rows of the mob,
    /// that do not say.</summary>
    private static IEnumerable<Missing> Open(Condition condition, MeasureKind measure, string mob, int from, int to, Knowledge knowledge, Moment moment)
    {
        var ofTheMob = knowledge.Farm.MobResults.Where(row => row.Mob == mob && row.Measure == measure && row.Day >= from && row.Day <= to && !row.MayNotBeMeant)
            .Select(row => (row.Day, row.Line, row.Values, Whose: $"mob:{mob}"));
        var own = knowledge.Farm.Animals.SelectMany(animal => knowledge.Farm.Of(animal.Index, measure)
            .Where(row => row.Day >= from && row.Day <= to && knowledge.Farm.Mobs.IsIn(animal.Index, mob, row.Day) == Truth.True)
            .GroupBy(row => row.Day).OrderByDescending(day => day.Key).Take(1).SelectMany(day => day)
            .Select(row => (row.Day, row.Line, row.Values, Whose: animal.Index == moment.Animal ? "" : animal.Number)));
        return ofTheMob.Concat(own).Where(row => condition is MobCountCondition count
                ? NumberReference.Compare(count.Test, row.Values, knowledge.Farm.Animals[moment.Animal].Facts) == Truth.Unknown : row.Values.Low != row.Values.High)
            .Select(row => new Missing(row.Values.IsAny ? MissingReason.ResultPending : MissingReason.ResultTooVague, measure.Declaration.Name,
                DayNumber.Date(row.Day), DayNumber.Date(row.Day), SettledBy.LaboratoryOrTime, row.Line)
            { Whose = row.Whose });
    }

    /// <summary>What each sample, or all together, must be.</summary>
    public static NumberTest TestOf(Condition condition) => condition is MobCountCondition count ? count.Test : ((MobMeasuredCondition)condition).Test;

    /// <summary>Its measure and its windows.</summary>
    public static (MeasureKind Measure, IReadOnlyList<Window> Windows) Parts(Condition condition) => condition switch
    {
        MobMeasuredCondition measured => (measured.Measure, measured.Windows),
        MobCountCondition count => (count.Measure, count.Windows),
        _ => throw new ArgumentOutOfRangeException(nameof(condition)),
    };

    /// <summary>The days looked at, within her stay in the mob that she is in on d; none where that mob or the days are not known.</summary>
    private static IEnumerable<(int From, int To)> Stretches(Condition condition, Knowledge knowledge, Moment moment)
    {
        var (_, windows) = Parts(condition);
        if (knowledge.Farm.Mobs.At(moment.Animal, moment.Day) is not { } mob
            || knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict) is not { } possible)
        {
            return [];
        }

        var stay = knowledge.Farm.Mobs.StaysSince(moment.Animal, mob, moment.Day, knowledge.Coverage.Dawn);
        return possible.Select(stretch => (Math.Max(stretch.From, stay), stretch.To));
    }

    /// <summary>"A gap of that measure that could be dated in the window and could be of her mob: not known."</summary>
    private static bool MayHideOne(MeasureKind measure, string mob, int from, int to, Knowledge knowledge) =>
        Hidden(measure, mob, from, to, knowledge).Any();

    private static IEnumerable<Unread> Hidden(MeasureKind measure, string mob, int from, int to, Knowledge knowledge) =>
        knowledge.Farm.Unread.Where(row => row.MayBeA(measure) && row.MayBeIn(from, to)).Where(row =>
            row.Animal is null
                || knowledge.Farm.Animals.Any(animal => row.MayBeOf(animal)
                    && Enumerable.Range(row.Day ?? from, row.Day is null ? to - from + 1 : 1).Any(day => knowledge.Farm.Mobs.IsIn(animal.Index, mob, day) != Truth.False)));

    /// <summary>Every set of results that may be her mob's.</summary>
    private static IEnumerable<ImmutableList<ValueRange>> Choices(MeasureKind measure, string mob, int from, int to, Knowledge knowledge)
    {
        var rows = knowledge.Farm.MobResults.Where(row => row.Mob == mob && row.Measure == measure && row.Day >= from && row.Day <= to);
        IEnumerable<ImmutableList<ValueRange>> sets = [[.. rows.Where(row => !row.MayNotBeMeant).Select(row => row.Values)]];
        foreach (var row in rows.Where(row => row.MayNotBeMeant))
        {
            sets = sets.SelectMany(set => new[] { set, set.Add(row.Values) });
        }

        foreach (var animal in knowledge.Farm.Animals)
        {
            var hers = Possible(animal.Index, measure, mob, from, to, knowledge).Distinct().ToList();
            sets = sets.SelectMany(set => hers.Select(one => one is { } value ? set.Add(value) : set));
        }

        // "So may a measure's herd row be a sample of her mob": of one animal more, or of none.
        foreach (var row in knowledge.Farm.GroupResults.Where(row => row.Mob is null && row.Result.Kind.Id == measure.Id && row.Result.Day >= from && row.Result.Day <= to))
        {
            sets = sets.SelectMany(set => new[] { set, set.Add(row.Result.Values) });
        }

        return sets;
    }

    /// <summary>The results that one animal may stand for: null for none.</summary>
    private static IEnumerable<ValueRange?> Possible(int animal, MeasureKind measure, string mob, int from, int to, Knowledge knowledge)
    {
        var days = knowledge.Farm.Of(animal, measure).Where(row => row.Day >= from && row.Day <= to).GroupBy(row => row.Day).OrderByDescending(day => day.Key);
        foreach (var day in days)
        {
            var isIn = knowledge.Farm.Mobs.IsIn(animal, mob, day.Key);
            if (isIn != Truth.False)
            {
                yield return day.Select(row => row.Values).Aggregate(ValueRange.Hull);
            }

            if (isIn == Truth.True)
            {
                yield break;
            }
        }

        yield return null;
    }

    private static Truth Judge(Condition condition, ImmutableList<ImmutableList<ValueRange>> choices, Knowledge knowledge, Moment moment)
    {
        var facts = knowledge.Farm.Animals[moment.Animal].Facts;
        if (condition is MobCountCondition count)
        {
            return Kleene.SameForAll(choices.Select(values => Count(count, values, facts)));
        }

        // An average (lowest, highest) that may be one of several numbers is taken to be any number from the least to the greatest of them.
        var measured = (MobMeasuredCondition)condition;
        return choices.Any(values => values.Count == 0 || values.Count < measured.FromAtLeast)
            ? Truth.Unknown
            : NumberReference.Compare(measured.Test, choices.Select(values => Together(measured.Aggregate, values)).Aggregate(ValueRange.Hull), facts);
    }

    private static Truth Count(MobCountCondition count, ImmutableList<ValueRange> values, IReadOnlyList<FactCell> facts)
    {
        if (values.Count < count.FromAtLeast)
        {
            return Truth.Unknown;
        }

        var each = values.Select(value => NumberReference.Compare(count.Test, value, facts)).ToList();
        return Comparing.Count(count.Count, each.Count(truth => truth == Truth.True), each.Count(truth => truth != Truth.False));
    }

    private static ValueRange Together(Aggregate aggregate, ImmutableList<ValueRange> values) => aggregate switch
    {
        Aggregate.Lowest => new ValueRange(
            values.Any(value => value.Low is null) ? null : values.Min(value => value.Low),
            values.Select(value => value.High).Where(high => high is not null).DefaultIfEmpty(null).Min()),
        Aggregate.Highest => new ValueRange(
            values.Select(value => value.Low).Where(low => low is not null).DefaultIfEmpty(null).Max(),
            values.Any(value => value.High is null) ? null : values.Max(value => value.High)),
        Aggregate.Average => new ValueRange(
            values.All(value => value.Low is not null) ? values.Average(value => value.Low!.Value) : null,
            values.All(value => value.High is not null) ? values.Average(value => value.High!.Value) : null).Rounded(),
        _ => throw new ArgumentOutOfRangeException(nameof(aggregate)),
    };
}

/// <summary>What was sampled of a mob.</summary>
/// <param name="Rows">All samples, of animals that were or may have been in it then, and its own.</param>
/// <param name="MayHideOne">A row that could not be read may be one more.</param>
/// <param name="AreEnough">As many surely count as are asked for.</param>
/// <param name="Sure">So many surely count.</param>
/// <param name="Together">What they come to, where they are enough: the number compared, or of those counted how many.</param>
public sealed record MobSampled(IReadOnlyList<MobResult> Rows, bool MayHideOne, bool AreEnough, int Sure, ValueRange? Together);
