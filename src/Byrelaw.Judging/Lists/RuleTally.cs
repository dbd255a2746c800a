namespace Byrelaw.Judging.Lists;

/// <summary>How many animals of a list one rule lets in on a day.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Met">Animals that meet it, those that it does not apply to among them.</param>
/// <param name="NotMet">Animals that do not.</param>
/// <param name="NotKnown">Animals of which it is not known.</param>
public sealed record RuleTally(Rule Rule, int Met, int NotMet, int NotKnown);
