namespace Byrelaw.Reporting.Words;

/// <summary>What a condition found, in a few words.</summary>
public static class FoundWords
{
    /// <summary>Such as <c>43 of 56 days</c>, <c>clean, 28 Sep</c>, <c>twice</c>.</summary>
    public static string Of(Finding finding, ListReport list) => finding.Found switch
    {
        FoundCount count => Count(count, finding.Condition),
        FoundSince since => Time(since.Elapsed, finding.Condition.Demand as TimeTest),
        FoundNever => "never",
        FoundAge age when age.Youngest == age.Oldest => Time(age.Youngest, finding.Condition.Demand as TimeTest),
        FoundAge age when age.Youngest.Unit == age.Oldest.Unit => $"between {age.Youngest.Count} and {age.Oldest}",
        FoundAge age => $"between {age.Youngest} and {age.Oldest}",
        FoundNumber number => Number(number, finding, list),
        FoundAnswers answers => $"{Phrases.And([.. answers.Answers.Select(answer => answer ?? "result not known")])}, {list.Short(answers.Date)}",
        FoundText text => text.Text,
        FoundSpell spell => Spell(spell, finding.Condition, list),
        FoundStanding standing => Standing(standing),
        _ => Nothing(finding),
    };

    private static string Count(FoundCount count, Condition condition)
    {
        Func<int, string> say = condition switch
        {
            CountCondition => number => number == 0 ? "none" : Numbers.Times(number),
            ApartCondition => number => number == 0 ? "none" : number == 1 ? "none so far apart" : Numbers.Count(number, "day", "days") + " so far apart",
            MobCountCondition => number => Numbers.Count(number, "animal", "animals"),
            _ => number => number.ToString(System.Globalization.CultureInfo.InvariantCulture),
        };
        return count switch
        {
            { AtMost: null } => count.AtLeast == 0 ? condition is CountCondition ? "not known whether there was any" : "not known how many" : $"at least {say(count.AtLeast)}",
            { AtMost: var most } when most == count.AtLeast => say(count.AtLeast),
            { AtLeast: 0 } => $"at most {say(count.AtMost.Value)}",
            _ => $"between {count.AtLeast} and {say(count.AtMost.Value)}",
        };
    }

    /// <summary>Time beside a demand that it has not passed is said as a part of it: 43 of 56 days.</summary>
    private static string Time(TimeLength found, TimeTest? test) =>
        test is { Comparison: Comparison.AtLeast } && test.Low.Unit == found.Unit && found.Count <= test.Low.Count
            ? $"{found.Count} of {test.Low}"
            : found.ToString();

    private static string Number(FoundNumber number, Finding finding, ListReport list)
    {
        var unit = number.Unit is null ? "" : $" {number.Unit}";
        var limit = LimitOf(finding.Condition, finding.Margin);
        var value = number switch
        {
            _ when TooFew(number, finding.Condition) is { } few => few,
            { Low: double.NegativeInfinity, High: double.PositiveInfinity } => "result not known",
            { Low: double.NegativeInfinity } => $"at most {Numbers.Of(number.High)}{unit}",
            { High: double.PositiveInfinity } => $"more than {Numbers.Of(number.Low)}{unit}",
            _ when number.Low == number.High => $"{(limit is null ? Numbers.Of(number.Low) : Numbers.Beside(number.Low, limit.Value))}{unit}",
            _ => $"between {Numbers.Of(number.Low)} and {Numbers.Of(number.High)}{unit}",
        };
        var of = finding.Condition switch
        {
            MobMeasuredCondition mob when number.From >= mob.FromAtLeast => $", {number.From} sampled",
            MeasuredCondition { Aggregate: Aggregate.Average or Aggregate.Change } when number.From > 1 => $", {number.From} results",
            _ => "",
        };
        return value + of + (number.Date is { } date ? $", {list.Short(date)}" : "");
    }

    /// <summary>With too few of a mob sampled the number says nothing, and how many are sampled says all.</summary>
    private static string? TooFew(FoundNumber number, Condition condition) =>
        condition is MobMeasuredCondition mob && number.From < mob.FromAtLeast
            ? $"{(number.From == 0 ? "none" : number.From)} of {mob.FromAtLeast} sampled" : null;

    /// <summary>The limit that a value nearly touches, so that rounding never hides on which side it is.</summary>
    private static double? LimitOf(Condition condition, double? margin)
    {
        var test = condition.Demand as NumberTest;
        return test is null || margin is null || test.Low.PercentOf is not null || test.High.PercentOf is not null ? null
            : test.Comparison is Comparison.AtMost or Comparison.LessThan ? test.High.Value
            : test.Low.Value;
    }

    private static string Spell(FoundSpell spell, Condition condition, ListReport list)
    {
        var name = (condition as SpellCondition)?.Spell.Name ?? "in it";
        return spell.Day is { } day ? $"{name}, last on {list.Short(day)}" : $"not {name}";
    }

    private static string Standing(FoundStanding standing)
    {
        var open = standing.NoValue switch { 0 => "", 1 => ", 1 has no value", _ => $", {standing.NoValue} have no value" };
        var higher = standing.Greater switch { 0 => $"none of {standing.Of} stands higher", 1 => $"1 of {standing.Of} stands higher", _ => $"{standing.Greater} of {standing.Of} stand higher" };
        return $"{Numbers.Of(standing.Value)}, {higher}{open}";
    }

    private static string Nothing(Finding finding) => finding.Condition switch
    {
        _ when finding.Missing.Any(missing => missing.Reason == MissingReason.FactUnreadable) => "cannot be read",
        SeriesCondition { Results: > 0 } series => $"fewer than {series.Results} results",
        MobMeasuredCondition mob => $"none of {mob.FromAtLeast} sampled",
        MobCountCondition mob => $"none of {mob.FromAtLeast} sampled",
        _ => "nothing on record",
    };
}
