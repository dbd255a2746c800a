using Byrelaw.Language.Rulebooks;

namespace Byrelaw.Checking.Trouble.Reasoning;

/// <summary>A rule made ready to be reasoned about.</summary>
/// <param name="Rule">Which.</param>
/// <param name="Applies">That it applies to her.</param>
/// <param name="Needs">That she is as it needs her to be.</param>
internal sealed record RuleFormulas(Rule Rule, Formula Applies, Formula Needs)
{
    /// <summary>That it does not stand in her way.</summary>
    public Formula Met { get; } = Formula.Any(Formula.Not(Applies), Needs);

    /// <summary>What it speaks of.</summary>
    public Touched Touches { get; } = Touched.By(Applies, Needs);

    public static RuleFormulas Of(Rule rule, FormulaMaker maker)
    {
        var sort = new SortOfAnimal(rule.Audience, $"applies to {rule.AppliesTo?.Define ?? rule.Audience.ToString().ToLowerInvariant()}") { Span = rule.Span };
        return new RuleFormulas(rule, maker.Of(rule.Audience, rule.AppliesTo, sort), maker.Of(rule.Needs));
    }
}
