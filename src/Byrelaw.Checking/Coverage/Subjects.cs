namespace Byrelaw.Checking.Coverage;

/// <summary>What a condition is about, in a few words.</summary>
internal static class Subjects
{
    /// <summary>The kinds of record that may lie in a condition's windows; of a spell, those that end it.</summary>
    public static ImmutableArray<Kind> RecordsOf(Condition condition) =>
        condition is SpellCondition spell ? [spell.Spell.Until] : new ConditionParts(condition).Kinds;

    /// <summary>The same in words.</summary>
    public static string OfRecords(Condition condition) => condition is CountCondition or ApartCondition ? condition.Subject : Of(RecordsOf(condition));

    /// <summary>Of kinds, any of which is meant.</summary>
    public static string Of(IEnumerable<Kind> kinds) => string.Join(" or ", kinds.Select(kind => kind.Name));

    /// <summary>Of a day.</summary>
    public static string Of(WindowDay day) => day.Date is { } date ? Of(date) : $"last {Of(day.Last)}";

    /// <summary>A day by its name, or as written.</summary>
    public static string Of(DateReference date) => date.Name ?? (date.Value is { } day ? LocalDatePattern.Iso.Format(day) : "a date");
}
