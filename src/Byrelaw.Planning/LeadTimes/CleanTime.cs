using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.LeadTimes;

/// <summary>A time before a date of the programme in which nothing may happen, because a rule looks back so far: a donor's clean months.</summary>
/// <param name="List">The rule's list.</param>
/// <param name="Rule">The rule.</param>
/// <param name="From">Its first day.</param>
/// <param name="To">The date of the programme.</param>
/// <param name="Date">That date's name.</param>
public sealed record CleanTime(string List, string Rule, LocalDate From, LocalDate To, string Date)
{
    /// <summary>All of them for the lists that the programme draws up, earliest first: read from the rules themselves, so that they cannot disagree with them.</summary>
    public static ImmutableArray<CleanTime> Of(Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var programme = rulebook.Programme!;
        var chosen = programme.Choices.Select(choice => choice.List).ToHashSet(StringComparer.Ordinal);
        var found =
            from rule in rulebook.Rules
            where (chosen.Contains(rule.List) || rule.List == Language.Rulebooks.Rule.EveryList) && !rule.IsBroken
            from window in Windows(rule.Needs, rulebook, [])
            where window.Date.Name is not null && programme.Date(window.Date.Name) is not null
            let date = programme.Date(window.Date.Name!)!.Value
            select new CleanTime(rule.List, rule.Name, FirstDay(date, window.Length), date, window.Date.Name!);
        return [.. found.Distinct().OrderBy(time => time.From).ThenBy(time => time.Rule, StringComparer.Ordinal)];
    }

    /// <summary>The first day from which the length reaches the date: lengths are added to the earlier date.</summary>
    private static LocalDate FirstDay(LocalDate date, TimeLength length)
    {
        var day = date.PlusDays(-length.Count * length.Unit switch { TimeUnit.Days => 1, TimeUnit.Weeks => 7, TimeUnit.Months => 31, _ => 366 });
        while (length.After(day) < date)
        {
            day = day.PlusDays(1);
        }

        return day;
    }

    // A define is entered once, however many speak of it.
    private static IEnumerable<BeforeDate> Windows(Condition condition, Rulebook rulebook, HashSet<int> entered) => condition switch
    {
        CountCondition { Test.IsNone: true } count => count.Windows.OfType<BeforeDate>(),
        NamedCondition { Not: false, Index: >= 0 } named when entered.Add(named.Index) => Windows(rulebook.Defines[named.Index].Condition, rulebook, entered),
        _ => condition.Items.SelectMany(item => Windows(item, rulebook, entered)),
    };
}
