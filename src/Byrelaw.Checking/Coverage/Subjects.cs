namespace Byrelaw.Checking.Coverage;

/// <summary>What a condition is about, in a few words.</summary>
internal static class Subjects
{
    /// <summary>Of a condition.</summary>
    public static string Of(Condition condition) => condition switch
    {
        CountCondition count => string.Join(" or ", count.Counted.Select(Of)),
        TimeSinceCondition since => Of(since.Kinds),
        AgeCondition => "age",
        ParityCondition => "parity",
        FactNumberCondition number => number.Fact.Name,
        FactTextCondition text => $"{text.Fact.Name} is {(text.IsNot ? "not " : "")}{string.Join(" or ", text.Values)}",
        FactDateCondition date => $"{date.Fact.Name} is {(date.IsNot ? "not " : "")}{LocalDatePattern.Iso.Format(date.Date)}",
        RecordedCondition recorded => $"{recorded.Fact.Name} is {(recorded.IsNot ? "not " : "")}recorded",
        MeasuredCondition measured => $"{Of(measured.Aggregate)} {measured.Measure.Name}",
        TestCondition test => $"latest {test.Test.Name} is {(test.IsNot ? "not " : "")}{string.Join(" or ", test.Answers.Select(answer => test.Test.Answers[answer]))}",
        MobMeasuredCondition mob => $"{Of(mob.Aggregate)} {mob.Measure.Name} of her mob",
        MobCountCondition mob => $"of her mob with such {mob.Measure.Name}",
        SpellCondition spell => $"{(spell.Not ? "not " : "")}{spell.Spell.Name}",
        StandingCondition standing => $"her place by {standing.Fact.Name}",
        _ => "",
    };

    /// <summary>The records that a condition looks at; of a spell, those that end it.</summary>
    public static string OfRecords(Condition condition) => condition switch
    {
        MeasuredCondition measured => measured.Measure.Name,
        TestCondition test => test.Test.Name,
        MobMeasuredCondition mob => mob.Measure.Name,
        MobCountCondition mob => mob.Measure.Name,
        SpellCondition spell => spell.Spell.Until.Name,
        _ => Of(condition),
    };

    /// <summary>Of kinds, any of which is meant.</summary>
    public static string Of(IEnumerable<Kind> kinds) => string.Join(" or ", kinds.Select(kind => kind.Name));

    /// <summary>Of a day.</summary>
    public static string Of(DateReference date) => date.Name ?? (date.Value is { } day ? LocalDatePattern.Iso.Format(day) : "a date");

    private static string Of(Counted counted) => counted.Kind is TestKind test && counted.Answer >= 0 ? $"{test.Answers[counted.Answer]} {test.Name}" : counted.Kind.Name;

    private static string Of(Aggregate aggregate) => aggregate switch
    {
        Aggregate.Latest => "latest",
        Aggregate.Lowest => "lowest",
        Aggregate.Highest => "highest",
        Aggregate.Average => "average",
        _ => "change in",
    };
}
