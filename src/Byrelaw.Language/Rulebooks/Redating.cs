namespace Byrelaw.Language.Rulebooks;

/// <summary>The same rules with other days for the dates of the programme that they name.</summary>
public static class Redating
{
    /// <summary>Sets the dates given in every rule, preference and defined condition; a date that is not among them is not set any more.</summary>
    public static Rulebook With(this Rulebook rulebook, IEnumerable<ProgrammeDate> dates)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var days = dates.ToDictionary(date => NameFolding.Fold(date.Name), date => date.Date, StringComparer.Ordinal);
        return rulebook with
        {
            Defines = [.. rulebook.Defines.Select(define => define with { Condition = Set(define.Condition, days) })],
            Rules = [.. rulebook.Rules.Select(rule => rule with { Needs = Set(rule.Needs, days) })],
            Prefers = [.. rulebook.Prefers.Select(prefer => prefer with { Condition = Set(prefer.Condition, days) })],
        };
    }

    private static Condition Set(Condition condition, Dictionary<string, LocalDate> days) => condition switch
    {
        ListCondition list => list with { Items = [.. list.Items.Select(item => Set(item, days))] },
        CountCondition count => count with { Windows = Set(count.Windows, days) },
        MeasuredCondition measured => measured with { Windows = Set(measured.Windows, days) },
        TestCondition test => test with { Windows = Set(test.Windows, days) },
        MobMeasuredCondition mob => mob with { Windows = Set(mob.Windows, days) },
        MobCountCondition mob => mob with { Windows = Set(mob.Windows, days) },
        SpellCondition spell => spell with { Windows = Set(spell.Windows, days) },
        _ => condition,
    };

    private static ImmutableArray<Window> Set(ImmutableArray<Window> windows, Dictionary<string, LocalDate> days) => [.. windows.Select(window => window switch
    {
        BeforeDate before => before with { Date = Set(before.Date, days) },
        SinceDate since => since with { Date = Set(since.Date, days) },
        _ => window,
    })];

    private static DateReference Set(DateReference date, Dictionary<string, LocalDate> days) =>
        date.Name is null ? date : date with { Value = days.TryGetValue(NameFolding.Fold(date.Name), out var day) ? day : null };
}
