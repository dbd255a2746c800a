namespace Byrelaw.Planning.Recipients;

/// <summary>A method that can still start, beside the others.</summary>
/// <param name="Method">Which, chosen by the programme or not.</param>
/// <param name="IsChosen">Whether the programme may use it.</param>
/// <param name="Sessions">The sessions for which it can still start.</param>
/// <param name="Sure">Animals that are sure by it in one of these.</param>
/// <param name="ToAsk">Animals that are to ask about in one of these, and sure in none.</param>
/// <param name="Used">Of those treated or watched, so many are used.</param>
/// <param name="CostPerAccepted">Treatment and keep of all the animals that it takes to have one accepted; null where the treatment has no price.</param>
/// <param name="CostPerLiveHeifer">For each live heifer calf, her embryo and transfer too; null where the treatment has no price, or the chain does not go so far.</param>
/// <param name="IsAtLeast">Whether the embryo or the transfer has no price.</param>
public sealed record MethodBeside(
    Method Method, bool IsChosen, ImmutableArray<int> Sessions, int Sure, int ToAsk, Rate Used, double? CostPerAccepted, double? CostPerLiveHeifer, bool IsAtLeast)
{
    /// <summary>Every method that can still start, the cheapest live heifer calf first; those without a price are not ranked and come last, in the order of the files.</summary>
    /// <param name="plans">Methods, rates and prices.</param>
    /// <param name="sessions">Those that are not over.</param>
    /// <param name="chain">What becomes of embryos; null where that is not known.</param>
    /// <param name="today">The day of planning.</param>
    internal static ImmutableArray<MethodBeside> Of(PlanStatements plans, ImmutableArray<NamedSession> sessions, Chain? chain, LocalDate today) =>
    [
        .. plans.Methods.Where(method => !method.IsForDonors).Select(method => Of(plans, method, sessions, chain, today)).OfType<MethodBeside>()
            .OrderBy(beside => beside.CostPerLiveHeifer ?? double.PositiveInfinity).ThenBy(beside => beside.CostPerAccepted ?? double.PositiveInfinity),
    ];

    private static MethodBeside? Of(PlanStatements plans, Method method, ImmutableArray<NamedSession> sessions, Chain? chain, LocalDate today)
    {
        var checks = sessions.Where(session => !session.Session.IsStopped).Select(session => (session.Number, Checked: session.Methods.FirstOrDefault(one => one.Method.Name == method.Name) ?? MethodChecked.Of(session.Session, method, today)))
            .Where(one => CanStart(one.Checked, today)).ToList();
        if (checks.Count == 0)
        {
            return null;
        }

        var (sure, asked) = (0, 0);
        for (var animal = 0; animal < checks[0].Checked.Animals.Length; animal++)
        {
            var best = checks.Max(one => one.Checked.Animals[animal].Standing);
            sure += best == Standing.Sure ? 1 : 0;
            asked += best == Standing.ToAsk ? 1 : 0;
        }

        var used = UseChain.Of(method, checks[0].Checked.Days, plans).Used;
        var price = plans.CostOf(method)?.Amount;
        var accepted = used.Share > 0 && price is { } each ? (each + (method.IsNatural ? 0 : Charges.Keep(plans) ?? 0)) / used.Share : (double?)null;
        var (carried, isAtLeast) = Embryo(plans, chain);
        return new(
            method, sessions[0].Methods.Any(one => one.Method.Name == method.Name), [.. checks.Select(one => one.Number)], sure, asked, used, accepted,
            chain is not null && chain.AfterTransfer.Any(step => step.To == Stage.Heifers) && chain.AfterTransfer.Aggregate(1.0, (left, step) => left * step.Rate.Share) is > 0 and var calves
                ? (carried + accepted) / calves : null,
            isAtLeast);
    }

    private static bool CanStart(MethodChecked method, LocalDate today) =>
        method.Days.Heats.Any(heat => method.Days.Window.Serves(heat.Date)) && (method.Method.IsNatural ? method.Days.Heats.Any(heat => heat.Date >= today) : method.Days.Start >= today);

    /// <summary>What an embryo and its transfer cost, as far as they have prices.</summary>
    private static (double Cost, bool IsAtLeast) Embryo(PlanStatements plans, Chain? chain)
    {
        if (Price(CostUnit.EmbryoTransferred) is { } all)
        {
            return (all, false);
        }

        var isFrozen = chain?.Source.Kind == EmbryoSourceKind.Frozen;
        var collection = !isFrozen && chain is { Source.EmbryosPerTime: > 0 and var embryos } ? Price(CostUnit.Collection) / embryos : null;
        var (making, transfer) = (Price(CostUnit.Embryo), Price(CostUnit.Transfer));
        var isMissing = (!isFrozen && collection is null) || (chain?.Source.Kind != EmbryoSourceKind.Flushed && making is null) || transfer is null;
        return ((collection ?? 0) + (making ?? 0) + (transfer ?? 0), isMissing);

        double? Price(CostUnit per) => plans.Cost(per)?.Amount.Amount;
    }
}
