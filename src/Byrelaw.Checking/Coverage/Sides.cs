namespace Byrelaw.Checking.Coverage;

/// <summary>
/// The sides of a condition's numbers, in words: below each, exactly at it, above it; for what is no number, that it
/// holds and that it does not; and that the records do not say.
/// </summary>
internal static class Sides
{
    /// <summary>All sides of a condition.</summary>
    public static IEnumerable<string> Of(Condition condition)
    {
        var subject = condition.Subject;
        return Values(condition, subject).Concat(condition.Windows.SelectMany(window => OfWindow(window, Subjects.OfRecords(condition)))).Concat(NotRecorded(condition, subject));
    }

    /// <summary>The side of a limit that a number is on.</summary>
    public static string Number(string subject, double limit, double value, string after = "") =>
        value < limit ? Below(subject, Text(limit) + after) : value > limit ? Above(subject, Text(limit) + after) : At(subject, Text(limit) + after);

    /// <summary>The side of a count's limit that a count is on.</summary>
    public static string Count(string subject, int limit, int count) =>
        limit == 0 ? count == 0 ? $"no {subject}" : $"some {subject}"
        : count < limit ? $"fewer than {limit} {subject}" : count > limit ? $"more than {limit} {subject}" : $"exactly {limit} {subject}";

    /// <summary>The side of a length of time that an event is on: how the day so long after it lies to a day.</summary>
    public static string Time(string subject, TimeLength length, string to, int order) =>
        order < 0 ? $"{subject} more than {length} {to}" : order > 0 ? $"{subject} less than {length} {to}" : $"{subject} exactly {length} {to}";

    /// <summary>The side of an age that an animal is on: how the day on which she reaches it lies to a day.</summary>
    public static string Age(TimeLength age, int order) => order < 0 ? $"older than {age}" : order > 0 ? $"younger than {age}" : $"exactly {age} old";

    /// <summary>The side of the top of the herd that an animal is on.</summary>
    public static string Top(StandingCondition standing, double place)
    {
        var top = $"the top {Text(standing.Percent)}% by {standing.Fact.Name}";
        return place < standing.Percent ? $"inside {top}" : place > standing.Percent ? $"outside {top}" : $"the last of {top}";
    }

    /// <summary>What stands after a limit: a share names what it is of.</summary>
    public static string Whole(Limit limit) => limit.PercentOf is { } whole ? $"% of {whole.Name}" : "";

    /// <summary>The side of a day that an event is on.</summary>
    public static string Day(string subject, string day, int order) =>
        order < 0 ? $"{subject} before {day}" : order > 0 ? $"{subject} after {day}" : $"{subject} on {day}";

    /// <summary>That a condition without a number holds, or does not.</summary>
    public static string Holds(string subject, bool holds) => holds ? $"{subject}: true" : $"{subject}: false";

    /// <summary>That the records do not say.</summary>
    public static string Unknown(string subject) => $"{subject}: not known";

    /// <summary>The limits of a demand.</summary>
    public static IEnumerable<T> Limits<T>(Comparison comparison, T low, T high) => comparison == Comparison.Between ? [low, high] : [low];

    /// <summary>How many animals a condition about a mob asks for; null for every other.</summary>
    public static int? FromAnimals(Condition condition) =>
        (int?)new ConditionParts(condition).Numbers.FirstOrDefault(number => number.Part == NumberPart.Sampled)?.Value;

    /// <summary>The subject of the number of animals of her mob that have a result.</summary>
    public static string Sampled(Condition condition) => $"animals of her mob with {Subjects.OfRecords(condition)}";

    private static IEnumerable<string> Values(Condition condition, string subject) => (condition switch
    {
        AgeCondition { Test: var age } => Limits(age.Comparison, age.Low, age.High).SelectMany(limit => Orders(order => Age(limit, order))),
        ParityCondition { Test: var parity } => Limits(parity.Comparison, parity.Low, parity.High).SelectMany(limit => Numbers(subject, limit)),
        StandingCondition standing => new[] { standing.Percent - 1, standing.Percent, standing.Percent + 1 }.Select(place => Top(standing, place)),
        { Demand: TimeTest time } => Limits(time.Comparison, time.Low, time.High).SelectMany(limit => Orders(order => Time(subject, limit, "ago", order))),
        { Demand: CountTest count } => Counts(count, subject),
        { Demand: NumberTest number } => Limits(number.Comparison, number.Low, number.High)
            .SelectMany(limit => Numbers(subject, limit.Value, Whole(limit)).Where(side => IsOnScale(side, limit, condition, subject))),
        _ => [Holds(subject, true), Holds(subject, false)],
    }).Concat(FromAnimals(condition) is { } least ? Animals(condition, least) : []);

    private static IEnumerable<string> OfWindow(Window window, string subject) => window switch
    {
        InTheLast last => Orders(order => Time(subject, last.Length, "ago", order)),
        AtLeastAgo ago => Orders(order => Time(subject, ago.Near, "ago", order)),
        BetweenAgo ago => Orders(order => Time(subject, ago.Near, "ago", order)).Concat(Orders(order => Time(subject, ago.Far, "ago", order))),
        BeforeDate before => Orders(order => Time(subject, before.Length, $"before {Subjects.Of(before.Date)}", order)),
        FromAfterSpell after => Orders(order => Time(subject, after.Wait, $"after {after.Spell.Name}", order)),
        FromAfterLast after => Orders(order => Time(subject, after.Wait, $"after {Subjects.Of(after.Kinds)}", order)),
        DaysAfter after => Orders(order => Time(subject, after.Length, $"after {Subjects.Of(after.Day)}", order)),
        BeforeDay before => Orders(order => Day(subject, Subjects.Of(before.Day), order)),
        SinceDate since => Orders(order => Day(subject, Subjects.Of(since.Date), order)),
        _ => [],
    };

    /// <summary>Whether a fact is recorded is known always.</summary>
    private static IEnumerable<string> NotRecorded(Condition condition, string subject) => condition is RecordedCondition ? [] : [Unknown(subject)];

    private static IEnumerable<string> Counts(CountTest test, string subject) =>
        Limits(test.Comparison, test.Low, test.High).SelectMany(limit => limit == 0
            ? [Count(subject, 0, 0), Count(subject, 0, 1)]
            : new[] { limit - 1, limit, limit + 1 }.Select(count => Count(subject, limit, count)));

    private static IEnumerable<string> Numbers(string subject, double limit, string after = "") =>
        new[] { limit - 1, limit, limit + 1 }.Select(value => Number(subject, limit, value, after));

    private static IEnumerable<string> Animals(Condition condition, int least) =>
        new[] { least - 1, least, least + 1 }.Select(count => Count(Sampled(condition), least, count));

    private static bool IsOnScale(string side, Limit limit, Condition condition, string subject) =>
        limit.PercentOf is not null || condition is not MeasuredCondition { Measure.Scale: { } scale }
        || !((limit.Value <= scale.From && side == Below(subject, Text(limit.Value))) || (limit.Value >= scale.To && side == Above(subject, Text(limit.Value))));

    private static IEnumerable<string> Orders(Func<int, string> side) => [side(1), side(0), side(-1)];

    private static string Below(string subject, string limit) => $"{subject} below {limit}";

    private static string At(string subject, string limit) => $"{subject} exactly {limit}";

    private static string Above(string subject, string limit) => $"{subject} above {limit}";

    private static string Text(double number) => number.ToString("0.#########", CultureInfo.InvariantCulture);
}
