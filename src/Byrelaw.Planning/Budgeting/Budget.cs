namespace Byrelaw.Planning.Budgeting;

/// <summary>What a programme costs.</summary>
/// <param name="Currency">Of every amount here; three capital letters.</param>
/// <param name="Lines">Every charge, in the programme's order.</param>
/// <param name="Low">In one season of ten it costs less than this.</param>
/// <param name="High">In one season of ten it costs more.</param>
/// <param name="Each">What one of each stage costs: the expected total over the number expected.</param>
/// <param name="Limit">What may be spent; null where nothing is said.</param>
/// <param name="ChanceWithinLimit">That the total stays within it; null where nothing is said, or where something has no price.</param>
/// <param name="NotPriced">What is done and stands in no line, because the programme gives no price for it.</param>
/// <param name="Lost">
/// Not spent, but lost: recipients that were accepted and are not pregnant calve a cycle later. Null where no price is put on that.
/// </param>
public sealed record Budget(
    string Currency, ImmutableArray<ExpectedCharge> Lines, double Low, double High, CostEach Each, double? Limit, double? ChanceWithinLimit, ExpectedCharge? Lost,
    ImmutableArray<NotPriced> NotPriced)
{
    /// <summary>Whether something that is done has no price: then every total is what it comes to at least.</summary>
    public bool IsAtLeast => !NotPriced.IsEmpty;

    /// <summary>To expect on average; at least so much where something has no price.</summary>
    public double Total => Lines.Sum(line => line.Amount);

    /// <summary>How much of the total is spent whatever comes of the season.</summary>
    public double Fixed => Lines.Where(line => !line.Varies).Sum(line => line.Amount);
}

/// <summary>One charge, with the number expected.</summary>
/// <param name="Charge">What is paid for.</param>
/// <param name="On">Where in the programme.</param>
/// <param name="Number">How many, on average.</param>
public sealed record ExpectedCharge(Charge Charge, SpentOn On, double Number)
{
    /// <summary>Whether the number depends on how the season goes.</summary>
    public bool Varies => Charge.Number is null && Charge.Per is not (CostUnit.Programme or CostUnit.Collection);

    /// <summary>What to expect of it.</summary>
    public double Amount => Charge.Price * Number;
}

/// <summary>Expected total over expected number.</summary>
/// <param name="Transfer">Per embryo transferred; null where none is expected.</param>
/// <param name="Pregnancy">Per pregnancy at the first check.</param>
/// <param name="LiveCalf">Per calf alive at a day old.</param>
/// <param name="LiveHeifer">Per heifer calf among them.</param>
public sealed record CostEach(double? Transfer, double? Pregnancy, double? LiveCalf, double? LiveHeifer);
