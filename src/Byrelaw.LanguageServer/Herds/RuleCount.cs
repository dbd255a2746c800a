namespace Byrelaw.LanguageServer.Herds;

/// <summary>How many animals of a programme's list one rule lets in.</summary>
/// <param name="Programme">The programme's name.</param>
/// <param name="List">The list.</param>
/// <param name="On">The day that is judged for.</param>
/// <param name="RecordsTo">The day the records reach.</param>
/// <param name="Tally">The rule, and how many meet it.</param>
internal sealed record RuleCount(string Programme, string List, LocalDate On, LocalDate RecordsTo, RuleTally Tally);
