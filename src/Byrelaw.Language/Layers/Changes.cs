namespace Byrelaw.Language.Layers;

/// <summary>Makes the next version of a rule or preference: the lines that a change states replace those before, the others stay. Of a safety rule they
/// add to them.</summary>
internal static class Changes
{
    /// <summary>Applies one change. A broken version stays broken: what could not be read may have been any line.</summary>
    public static void Apply(RuleEntry target, Stated stated, RuleFile file, SourceSpan span, bool isBroken)
    {
        target.IsChangedElsewhere |= file != target.File;
        var basis = target.File.IsRoot ? Basis.Local : target.IsChangedElsewhere ? Basis.Changed : Basis.Base;
        if (target.Rule is { } rule)
        {
            target.Rule = (rule.IsSafety ? Added(rule, stated) : Replaced(rule, stated)) with
            {
                Because = stated.Because ?? rule.Because,
                Source = stated.Source ?? rule.Source,
                Agreement = stated.Agreement,
                Before = rule,
                Basis = basis,
                IsBroken = isBroken || rule.IsBroken,
                Span = span,
            };
        }
        else if (target.Prefer is { } prefer)
        {
            target.Prefer = prefer with
            {
                Condition = stated.Condition ?? prefer.Condition,
                Counts = stated.Counts ?? prefer.Counts,
                Because = stated.Because ?? prefer.Because,
                Source = stated.Source ?? prefer.Source,
                Agreement = stated.Agreement,
                Before = prefer,
                Basis = basis,
                IsBroken = isBroken || prefer.IsBroken,
                Span = span,
            };
        }
    }

    private static Rule Replaced(Rule rule, Stated stated) => rule with
    {
        Audience = stated.AppliesTo?.Audience ?? rule.Audience,
        AppliesTo = stated.AppliesTo is { } applies ? applies.Define : rule.AppliesTo,
        Needs = stated.Condition ?? rule.Needs,
        IfNotKnown = stated.IfNotKnown ?? rule.IfNotKnown,
        OnTheDay = rule.OnTheDay || stated.OnTheDay,
    };

    /// <summary>A safety rule asks what it asked, for whom it asked it, and what is asked now.</summary>
    private static Rule Added(Rule rule, Stated stated)
    {
        var added = stated.IfNotKnown == IfNotKnown.Exclude ? rule with { IfNotKnown = IfNotKnown.Exclude } : rule;
        return stated.Condition is not { } here ? added : added with
        {
            Needs = AskedBesides.Together(rule.Needs, here),
            Besides = new AskedBesides(rule.Needs, here),
        };
    }
}
