namespace Byrelaw.Language.Reasoning;

/// <summary>A rule made ready to be reasoned about.</summary>
/// <param name="Rule">Which.</param>
/// <param name="Applies">That it applies to her.</param>
/// <param name="Needs">That she is as it needs her to be.</param>
/// <param name="Touches">What it speaks of.</param>
internal sealed record RuleFormulas(Rule Rule, Formula Applies, Formula Needs, Touched Touches)
{
    /// <summary>That it does not stand in her way.</summary>
    public Formula Met { get; } = Formula.Any(Formula.Not(Applies), Needs);

    public static RuleFormulas Of(Rule rule, FormulaMaker maker)
    {
        var sort = new SortOfAnimal(rule.Audience, $"applies to {rule.AppliesTo?.Define ?? rule.Audience.ToString().ToLowerInvariant()}") { Span = rule.Span };
        var applies = maker.Make(rule.Audience, rule.AppliesTo, sort);
        var needs = maker.Make(rule.Needs);
        return new RuleFormulas(rule, applies, needs, Touched.By(maker.Quantities, maker.Age, applies, needs));
    }
}
