namespace Byrelaw.Language.Binding.Rules;

/// <summary>Binds what the files accept. One that cannot be read accepts nothing.</summary>
internal static class AcceptanceBinder
{
    /// <summary>All acceptances of all files; those agreed after <paramref name="knownOn"/> do not exist.</summary>
    public static List<Acceptance> Bind(IReadOnlyList<RuleFile> files, RuleBinder rules, Namespace names, LocalDate? knownOn)
    {
        var acceptances = new List<Acceptance>();
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block.Kind == BlockKind.Accept))
            {
                if (Bind(new Context(names, file.Problems), file, block, rules) is { } acceptance && !(acceptance.Agreement?.On > knownOn))
                {
                    acceptances.Add(acceptance);
                }
            }
        }

        return acceptances;
    }

    private static Acceptance? Bind(Context context, RuleFile file, Block block, RuleBinder rules)
    {
        var stated = Stated.Bind(context, block, []);
        if (block.Head is not AcceptLine head)
        {
            return null;
        }

        var name = Named(context, rules, file, head.Name);
        if (head.Trouble == TroubleSort.PassesNotKnown && rules.Find(head.Name.Value)?.Rule is { IsSafety: true } safety)
        {
            context.Problems.Add(SafetyProblems.PassingNotAccepted(block.Span, safety.Name, safety.Span));
            return null;
        }

        var other = head.Other is null ? null : Named(context, rules, file, head.Other);
        if (!block.IsBroken && stated.Because is null)
        {
            context.Problems.Add(LayerProblems.NoBecause(block.Span, "accept"));
        }

        // What a file says itself it may accept itself; for what another says, someone has to stand.
        var isOwn = name?.At is { } at && ReferenceEquals(at.File, file.Source);
        if (!block.IsBroken && name is not null && !isOwn && stated.Agreement is null)
        {
            context.Problems.Add(LayerProblems.NoAgreement(block.Span, "accept"));
        }

        return name is null || (head.Other is not null && other is null) || stated.Because is null || block.IsBroken || (!isOwn && stated.Agreement is null)
            ? null
            : new Acceptance(name.Value.Name, head.Trouble, other?.Name, stated.Because, stated.Agreement, block.Span);
    }

    /// <summary>The rule or preference of this name that the file lies over, or whatever else has it; null, and a problem, for none.</summary>
    private static (string Name, SourceSpan? At)? Named(Context context, RuleBinder rules, RuleFile file, TextSyntax name)
    {
        var rule = rules.Find(name.Value);
        if (rule is not null && file.Sees(rule.File))
        {
            return (rule.Name, rule.Span);
        }

        if (context.Names.Find(name.Value) is { } symbol)
        {
            return (symbol.Name, symbol.Declared);
        }

        if (rule is not null)
        {
            context.Problems.Add(LayerProblems.NotUnderThisFile(name.Span, rule.Name, rule.Span));
            return null;
        }

        if (FloorText.Keeps(name.Value))
        {
            context.Problems.Add(FloorProblems.NobodysToChange(name.Span, name.Value));
            return null;
        }

        var near = rules.Nearest(name.Value)?.Name ?? context.Names.Nearest(name.Value, _ => true)?.Spelling;
        context.Problems.Add(LayerProblems.NothingCalled(name.Span, name.Value, near));
        return null;
    }
}
