namespace Byrelaw.Reporting.Tuning;

/// <summary>A number of a rule in words: what it is, and its values.</summary>
internal static class NumberWords
{
    private const decimal Grain = 0.000001m;

    /// <summary><c>Days since last calving</c>, <c>Latest body condition, lower limit</c>, <c>Length of “in the last 45 days”</c>.</summary>
    public static string Title(RuleNumber number)
    {
        var through = number.Through.IsEmpty ? "" : $", in “{number.Through[^1]}”";
        return Phrases.Sentence(What(number) + Side(number) + through);
    }

    /// <summary>A value with its unit: <c>52 days</c>, <c>4.5</c>, <c>95 umol/kg</c>, <c>20%</c>.</summary>
    public static string Value(RuleNumber number, decimal value) => number.Number switch
    {
        { Sort: NumberSort.Time } time => new TimeLength((int)value, time.TimeUnit).ToString(),
        { Sort: NumberSort.Share } => $"{Bare(value)}%",
        { Unit: { } unit } => $"{Bare(value)} {unit.Symbol}",
        _ => Bare(value),
    };

    /// <summary>What stands at the head of a column of values: <c>days</c>, <c>umol/kg</c>, <c>%</c>; empty for scores and counts.</summary>
    public static string Unit(RuleNumber number) => number.Number switch
    {
        { Sort: NumberSort.Time } time => time.TimeUnit.ToString().ToLowerInvariant(),
        { Sort: NumberSort.Share } => "%",
        { Unit: { } unit } => unit.Symbol,
        _ => "value",
    };

    /// <summary>A value without its unit.</summary>
    public static string Bare(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>A range of values: <c>41 to 57</c>, <c>up to 40</c>, <c>above 4 to 4.5</c>. An end beyond which no value makes sense is not said.</summary>
    public static string Range(ValueRange range, RuleNumber number)
    {
        var (lowest, highest) = ((decimal?)number.Number.Lowest, (decimal?)number.Number.Highest);
        var from = range.From is not { } low || low <= lowest ? "" : IsFine(low) ? $"above {Bare(low - Grain)}" : Bare(low);
        var to = range.To is not { } high || high >= highest ? "" : IsFine(high) && !IsFine(high + Grain) ? $"below {Bare(high + Grain)}" : Bare(high);
        return (from, to) switch
        {
            ("", "") => "any value",
            ("", _) => to.StartsWith('b') ? to : $"up to {to}",
            (_, "") => from.StartsWith('a') ? from : $"from {from}",
            _ when from == to => from,
            _ when to.StartsWith('b') => $"{from}, {to}",
            _ => $"{from} to {to}",
        };
    }

    private static bool IsFine(decimal value) => decimal.Remainder(value, Grain * 10) != 0;

    private static string What(RuleNumber number) => number.Number.Part switch
    {
        NumberPart.OfTheMob => "animals of her mob",
        NumberPart.Sampled => "animals of her mob with results",
        NumberPart.Apart => $"{Unit(number)} apart",
        NumberPart.OfTheList => "lines of the list that must hold",
        NumberPart.FirstWindow => Window(number, 0),
        NumberPart.SecondWindow => Window(number, 1),
        _ => Limit(number),
    };

    private static string Window(RuleNumber number, int place) => number.Condition.Windows[place] switch
    {
        InTheLast => $"{Unit(number)} back that “in the last” looks",
        BetweenAgo => $"{Unit(number)} ago",
        AtLeastAgo => $"{Unit(number)} ago, at least",
        BeforeDate before => $"{Unit(number)} before {before.Date.Name ?? "the date"}",
        FromAfterSpell after => $"{Unit(number)} after last {after.Spell.Name} from which results count",
        FromAfterLast after => $"{Unit(number)} after last {Names(after.Kinds)} from which results count",
        DaysAfter after => $"{Unit(number)} after {(after.Day.Date is { } date ? date.Name ?? "the date" : $"last {Names(after.Day.Last)}")}",
        _ => Unit(number),
    };

    private static string Limit(RuleNumber number) => number.Condition switch
    {
        TimeSinceCondition since => $"{Unit(number)} since last {Names(since.Kinds)}",
        AgeCondition => $"age in {Unit(number)}",
        CountCondition count => "how many of " + Phrases.Or([.. count.Counted.Select(counted => counted.Subject)]),
        ApartCondition apart => $"days with {apart.Subject}",
        MobCountCondition mob => $"{mob.Measure.Name} in her mob{Share(number)}",
        StandingCondition standing => $"the top of {(standing.Group == HerdGroup.Herd ? "the herd" : standing.Group.ToString().ToLowerInvariant())}{(standing.WithValue ? " with a value" : "")} by {standing.Fact.Name}",
        var other => other.Subject + Share(number),
    };

    private static string Share(RuleNumber number) => LimitOf(number)?.PercentOf is { } fact ? $", per cent of {fact.Name}" : "";

    private static Limit? LimitOf(RuleNumber number)
    {
        var test = number.Condition is MobCountCondition mob ? mob.Test : number.Condition.Demand as NumberTest;
        return number.Number.IsHigh ? test?.High : test?.Low;
    }

    private static string Side(RuleNumber number) =>
        number.Number.Comparison == Comparison.Between || IsOfTwo(number) ? number.Number.IsHigh ? ", upper limit" : ", lower limit" : "";

    private static bool IsOfTwo(RuleNumber number) =>
        number.Number.Part is NumberPart.FirstWindow or NumberPart.SecondWindow
        && number.Condition.Windows[number.Number.Part == NumberPart.FirstWindow ? 0 : 1] is BetweenAgo;

    private static string Names(IEnumerable<Kind> kinds) => Phrases.Or([.. kinds.Select(kind => kind.Name)]);
}
