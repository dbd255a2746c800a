namespace Byrelaw.Planning.Budgeting;

/// <summary>What one who shares the costs pays.</summary>
/// <param name="Who">As the programme names them; null for what no line shares out.</param>
/// <param name="Amount">To expect on average, in the budget's money.</param>
public sealed record PaidBy(string? Who, double Amount)
{
    /// <summary>Everyone who pays, in the order of writing, and last what nobody is said to pay; none where nothing is shared.</summary>
    /// <param name="shared">Whose money it is.</param>
    /// <param name="budget">What is paid.</param>
    public static ImmutableArray<PaidBy> Of(ImmutableArray<CostsShared> shared, Budget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        if (shared.IsEmpty)
        {
            return [];
        }

        var payers = shared.SelectMany(one => one.Shares.Select(share => share.Who)).Distinct().ToArray();
        var (amounts, nobodys) = (new double[payers.Length], 0.0);
        foreach (var line in budget.Lines)
        {
            if (SharesOf(shared, line.Charge.Per) is not { } shares)
            {
                nobodys += line.Amount;
                continue;
            }

            foreach (var share in shares)
            {
                amounts[Array.IndexOf(payers, share.Who)] += share.Share * line.Amount;
            }
        }

        return [.. payers.Select((who, i) => new PaidBy(who, amounts[i])), .. nobodys > 0 ? [new PaidBy(null, nobodys)] : Array.Empty<PaidBy>()];
    }

    /// <summary>A line about this kind of cost, else the one about all costs.</summary>
    private static ImmutableArray<PayersShare>? SharesOf(ImmutableArray<CostsShared> shared, CostUnit per)
    {
        SharedCosts? kind = per switch
        {
            CostUnit.AnimalTreated or CostUnit.Sample => SharedCosts.Treatments,
            CostUnit.Transfer or CostUnit.EmbryoTransferred or CostUnit.Visit => SharedCosts.Transfers,
            _ => null,
        };
        return ((kind is null ? null : shared.FirstOrDefault(one => one.Kind == kind)) ?? shared.FirstOrDefault(one => one.Kind is null))?.Shares;
    }
}
