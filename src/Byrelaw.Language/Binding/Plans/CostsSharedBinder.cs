namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds whose money it is.</summary>
internal sealed class CostsSharedBinder(Context context, Block block)
{
    /// <summary>All of a programme's lines; one that does not come to a hundred is told and left out.</summary>
    public ImmutableArray<CostsShared> Bind()
    {
        var all = ImmutableArray.CreateBuilder<CostsShared>();
        foreach (var line in block.Lines.OfType<CostsSharedLine>())
        {
            if (all.FirstOrDefault(one => one.Kind == line.Kind) is { } twice)
            {
                context.Problems.Add(PlanProblems.Twice(line.Span, "costs shared", twice.Span));
            }
            else if (line.Shares.FirstOrDefault(share => share.Percent.Value is < 0 or > 100) is { Percent: { } wrong })
            {
                context.Problems.Add(PlanProblems.NotAShare(wrong.Span));
            }
            else if (line.Shares.Sum(share => share.Percent.Value) is var sum && Math.Abs(sum - 100) > 1e-6)
            {
                context.Problems.Add(AimProblems.SharesNotWhole(line.Shares[0].Who.Span.To(line.Shares[^1].Percent.Span), NumberText.Of(Math.Round(sum, 6))));
            }
            else
            {
                all.Add(new(line.Kind, [.. line.Shares.Select(share => new PayersShare(share.Who.Value, share.Percent.Value / 100))], line.Span));
            }
        }

        return all.ToImmutable();
    }
}
