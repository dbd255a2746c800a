namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds the figures that people quote.</summary>
/// <param name="names">Of all files.</param>
/// <param name="plans">The methods.</param>
internal sealed class YardstickBinder(Namespace names, PlanStatements plans)
{
    /// <summary>All of them, in the order of writing; of a used file too, for a region quotes its own.</summary>
    public ImmutableArray<Yardstick> Bind(IEnumerable<RuleFile> files) =>
        [.. files.SelectMany(file => file.Blocks.Where(block => block.Head is YardstickLine).Select(block => Bind(new Context(names, file.Problems), block))).OfType<Yardstick>()];

    private Yardstick? Bind(Context context, Block block)
    {
        var line = (YardstickLine)block.Head!;
        var (because, source) = (block.First<BecauseLine>()?.Reason.Value, block.First<SourceLine>()?.Source.Value);
        if (because is null && source is null && !block.IsBroken)
        {
            context.Problems.Add(PlanProblems.NoReason(block.Span, "yardstick"));
        }

        if (line.Amount is { } amount)
        {
            return context.Money(amount) is { } cost ? new(null, null, cost, because, source, block.Span) : null;
        }

        if (plans.Method(line.Method!.Value) is not { } method)
        {
            return context.Fail<Yardstick>(AimProblems.UnknownMethod(line.Method.Span, line.Method.Value, [.. plans.Methods.Where(one => !one.IsForDonors).Select(one => one.Name)]));
        }

        return method.IsForDonors ? context.Fail<Yardstick>(AimProblems.MethodForOthers(line.Method.Span, method.Name, method.IsForDonors))
            : line.Used!.Value is <= 0 or > 100 ? context.Fail<Yardstick>(PlanProblems.NotAShare(line.Used.Span))
            : new(method.Name, line.Used.Value / 100, null, because, source, block.Span);
    }
}
