namespace Byrelaw.Language.Layers;

/// <summary>
/// Applies the changes, drops and waivers of every file to the rules of the files under it, in
/// the order of layers. Agreements after <paramref name="knownOn"/> do not exist.
/// </summary>
internal sealed class LayerResolver(RuleBinder rules, Namespace names, IReadOnlyList<DefineEntry> defines, LocalDate? knownOn)
{
    /// <summary>Rules set aside for one animal.</summary>
    public List<Waiver> Waivers { get; } = [];

    /// <summary>What the files expect of the records.</summary>
    public ExpectationChanges Expectations { get; init; } = new([], knownOn);

    /// <summary>Expectations that single animals are not held to.</summary>
    public List<ExpectationWaiver> ExpectationWaivers { get; } = [];

    /// <summary>Applies all layers; files come after those they use.</summary>
    public void Apply(IReadOnlyList<RuleFile> files)
    {
        foreach (var file in files)
        {
            var context = new Context(names, file.Problems);
            foreach (var block in file.Blocks)
            {
                switch (block.Kind)
                {
                    case BlockKind.Change:
                        Change(context, file, block);
                        break;
                    case BlockKind.Drop:
                        Drop(context, file, block);
                        break;
                    default:
                        break;
                }
            }
        }

        Conflicts.Tell(rules.Entries);
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block.Kind == BlockKind.Waive))
            {
                Waive(new Context(names, file.Problems), file, block);
            }
        }
    }

    private void Change(Context context, RuleFile file, Block block)
    {
        var stated = Stated.Bind(context, block, defines);
        var isAgreed = LayerChecks.IsAgreed(context, block, stated, "change");
        if (block.Head is ChangeLine named && rules.Find(named.Rule.Value) is null && Expectations.Find(named.Rule.Value) is { } expectation)
        {
            Expectations.Add(context, file, block, stated, expectation, isAgreed);
            return;
        }

        if (block.Head is not ChangeLine head || LayerChecks.Target(context, rules, file, head.Rule, Expectations) is not { } target)
        {
            // The rule that it meant to make stricter cannot be told from the others.
            rules.Broken.Add(new BrokenPart(null, block.Span));
            return;
        }

        var fits = ChangeChecks.Fit(context, block, stated, target) && isAgreed && !stated.IsBroken;
        if (!Exists(stated) || !target.Exists)
        {
            return;
        }

        var revives = Conflicts.Settles(target, file);
        if (target.Drop is { } drop && !revives)
        {
            context.Problems.Add(LayerProblems.Dropped(block.Span, target.Name, drop.Span));
            fits = false;
        }

        target.Drop = null;
        if (target.Rule is not { IsSafety: true })
        {
            // What only adds needs no settling.
            Conflicts.Lay(target, new Layer(file, block.Span, [.. stated.Lines]));
        }

        Changes.Apply(target, stated, file, block.Span, isBroken: !fits);
        if (ChangeChecks.MayHideARule(block, target))
        {
            rules.Broken.Add(new BrokenPart(null, block.Span));
        }
    }

    private void Drop(Context context, RuleFile file, Block block)
    {
        var stated = Stated.Bind(context, block, defines);
        var isAgreed = LayerChecks.IsAgreed(context, block, stated, "drop");
        if (block.Head is DropLine named && rules.Find(named.Rule.Value) is null && Expectations.Find(named.Rule.Value) is { } expectation)
        {
            context.Problems.Add(ExpectationProblems.Dropped(block.Span, expectation.Name, expectation.Span));
            return;
        }

        if (block.Head is not DropLine head || LayerChecks.Droppable(context, rules, file, head.Rule, Expectations, "dropped") is not { } target || !isAgreed || stated.IsBroken || !Exists(stated) || !target.Exists)
        {
            return;
        }

        Conflicts.Lay(target, new Layer(file, block.Span, ["drop"]));
        target.Drop = new Drop(target.Rule!, stated.Because!, stated.Agreement!, block.Span);
    }

    private void Waive(Context context, RuleFile file, Block block)
    {
        var stated = Stated.Bind(context, block, defines);
        var isAgreed = LayerChecks.IsAgreed(context, block, stated, "waive");
        var until = block.First<UntilLine>()?.Until;
        if (block.Head is WaiveLine waive && Expectations.Find(waive.Rule.Value) is { } expectation)
        {
            if (isAgreed && !stated.IsBroken && Exists(stated))
            {
                ExpectationWaivers.Add(new ExpectationWaiver(
                    expectation.Name, waive.Animal.Value, until?.Value, stated.Because!, stated.Agreement!, block.Span));
            }

            return;
        }

        if (until is null && !block.IsBroken)
        {
            context.Problems.Add(LayerProblems.NoUntil(block.Span));
        }

        if (block.Head is not WaiveLine head || LayerChecks.Droppable(context, rules, file, head.Rule, Expectations, "waived") is not { } target || !isAgreed || until is null)
        {
            return;
        }

        if (target.Drop is { } drop)
        {
            context.Problems.Add(LayerProblems.Dropped(head.Rule.Span, target.Name, drop.Span));
        }
        else if (until.Value < stated.Agreement!.On)
        {
            context.Problems.Add(LayerProblems.UntilBeforeAgreed(until.Span));
        }
        else if (!stated.IsBroken && Exists(stated) && target.Exists)
        {
            Waivers.Add(new Waiver(target.Name, head.Animal.Value, until.Value, stated.Because!, stated.Agreement, block.Span));
        }
    }

    /// <summary>What nobody had agreed to yet on the day does not exist; what cannot be read is taken as there.</summary>
    private bool Exists(Stated stated) => knownOn is not { } day || stated.Agreement is null || stated.Agreement.On <= day;
}
