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
            Plans = rulebook.Plans with
            {
                Methods = [.. rulebook.Plans.Methods.Select(method => method.Suits is { } suits ? method with { Suits = Set(suits, days) } : method)],
            },
        };
    }

    private static Condition Set(Condition condition, Dictionary<string, LocalDate> days) => condition.With(new OtherDays(days))!;

    private sealed class OtherDays(Dictionary<string, LocalDate> days) : OtherParts
    {
        public override DateReference Date(DateReference date) =>
            date.Name is null ? date : date with { Value = days.TryGetValue(NameFolding.Fold(date.Name), out var day) ? day : null };
    }
}
