using NodaTime;

namespace Byrelaw.LanguageServer.Herds;

/// <summary>How many animals of a programme's list one rule lets in.</summary>
/// <param name="Programme">The programme's name.</param>
/// <param name="List">The list.</param>
/// <param name="On">The day that is judged for.</param>
/// <param name="RecordsTo">The day the records reach.</param>
/// <param name="Met">Animals that meet it, those that it does not apply to among them.</param>
/// <param name="NotMet">Animals that do not.</param>
/// <param name="NotKnown">Animals of which it is not known.</param>
internal sealed record RuleCount(string Programme, string List, LocalDate On, LocalDate RecordsTo, int Met, int NotMet, int NotKnown);
