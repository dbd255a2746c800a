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
        var embryo = EmbryoCost.Of(plans, chain);
        return new(
            method, sessions[0].Methods.Any(one => one.Method.Name == method.Name), [.. checks.Select(one => one.Number)], sure, asked, used, accepted,
            embryo.Each(chain, Stage.Heifers, accepted), embryo.IsAtLeast);
    }

    private static bool CanStart(MethodChecked method, LocalDate today) =>
        method.Days.Heats.Any(heat => method.Days.Window.Serves(heat.Date)) && (method.Method.IsNatural ? method.Days.Heats.Any(heat => heat.Date >= today) : method.Days.Start >= today);
}
