namespace Byrelaw.Language.Layers;

/// <summary>Whether a change's lines fit what it changes.</summary>
internal static class ChangeChecks
{
    /// <summary>Says what does not fit; true where everything does.</summary>
    public static bool Fit(Context context, Block block, Stated stated, RuleEntry target)
    {
        var count = context.Problems.Count;
        foreach (var line in block.Lines)
        {
            if (target.Rule is not null && line is ConditionLine or CountsLine)
            {
                context.Problems.Add(LayerProblems.LineOfAPreference(line.Span, target.Name));
            }
            else if (line is EveryComesLine or RateLine or ElseLine)
            {
                context.Problems.Add(ExpectationProblems.LineOfAnExpectation(line.Span, target.Name));
            }
            else if (target.Rule is null && line is NeedsLine or AppliesToLine or IfNotKnownLine or OnTheDayLine)
            {
                context.Problems.Add(LayerProblems.LineOfARule(line.Span, target.Name));
            }
        }

        if (target.Rule is { IsSafety: true } safety)
        {
            TellWhatLoosens(context, block, safety);
        }

        if (!block.IsBroken && !stated.Lines.Any() && stated.Source is null)
        {
            context.Problems.Add(LayerProblems.ChangesNothing(block.Span));
        }

        return context.Problems.Count == count;
    }

    /// <summary>Lines by which a change of a safety rule could only ask less, or of fewer.</summary>
    private static void TellWhatLoosens(Context context, Block block, Rule rule)
    {
        foreach (var line in block.Lines)
        {
            if (line is IfNotKnownLine { Instead: IfNotKnown.Pass })
            {
                context.Problems.Add(RuleProblems.SafetyPasses(line.Span));
            }
            else if (line is AppliesToLine or OnTheDayLine or IfNotKnownLine { Instead: IfNotKnown.Ask })
            {
                context.Problems.Add(SafetyProblems.CannotBeChanged(line.Span, rule.Name, rule.Span));
            }
        }
    }

    /// <summary>Whether a line under a change to a rule reads like a condition of a preference: it may have been the head of another block.</summary>
    public static bool MayHideARule(Block block, RuleEntry target) => target.Rule is not null && block.First<ConditionLine>() is not null;
}
