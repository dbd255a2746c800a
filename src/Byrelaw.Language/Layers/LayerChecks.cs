namespace Byrelaw.Language.Layers;

/// <summary>What every change, drop and waiver must have, and whom it may be about.</summary>
internal static class LayerChecks
{
    /// <summary>Whether reason and agreement are there; says what is missing.</summary>
    public static bool IsAgreed(Context context, Block block, Stated stated, string what)
    {
        // A line that could not be read may have been the one that is missing.
        if (!block.IsBroken && stated.Because is null)
        {
            context.Problems.Add(LayerProblems.NoBecause(block.Span, what));
        }

        if (!block.IsBroken && stated.Agreement is null)
        {
            context.Problems.Add(LayerProblems.NoAgreement(block.Span, what));
        }

        return stated.Because is not null && stated.Agreement is not null;
    }

    /// <summary>The rule or preference meant; null, and a problem, where there is none that the file lies over.</summary>
    /// <param name="context">Where problems go.</param>
    /// <param name="rules">All of them.</param>
    /// <param name="file">The file that speaks of it.</param>
    /// <param name="name">As written.</param>
    /// <param name="expectations">What else the name may have meant.</param>
    public static RuleEntry? Target(Context context, RuleBinder rules, RuleFile file, TextSyntax name, ExpectationChanges expectations)
    {
        if (FloorText.Keeps(name.Value) && rules.Find(name.Value) is null)
        {
            context.Problems.Add(FloorProblems.NobodysToChange(name.Span, name.Value));
            return null;
        }

        if (rules.Find(name.Value) is not { } target)
        {
            context.Problems.Add(LayerProblems.UnknownRule(name.Span, name.Value, rules.Nearest(name.Value) ?? expectations.Nearest(name.Value)));
            return null;
        }

        if (file.Sees(target.File))
        {
            return target;
        }

        context.Problems.Add(LayerProblems.NotUnderThisFile(name.Span, target.Name, target.Span));
        return null;
    }

    /// <summary>The same where it must be a rule that can be set aside.</summary>
    public static RuleEntry? Droppable(Context context, RuleBinder rules, RuleFile file, TextSyntax name, ExpectationChanges expectations, string done)
    {
        if (Target(context, rules, file, name, expectations) is not { } target)
        {
            return null;
        }

        if (target.Rule is null)
        {
            context.Problems.Add(LayerProblems.PreferenceStays(name.Span, target.Name, done));
            return null;
        }

        if (!target.Rule.IsSafety)
        {
            return target;
        }

        context.Problems.Add(LayerProblems.SafetyStands(name.Span, target.Name, done, target.Span));
        return null;
    }
}
