namespace Byrelaw.Planning.Yardsticks;

/// <summary>Holds all that people quote against a plan.</summary>
internal static class YardsticksHeld
{
    /// <summary>Each in the order of writing; one about a method without a session is left out.</summary>
    public static ImmutableArray<YardstickHeld> Of(PlanStatements plans, ImmutableArray<Session> sessions, SeasonNumbers numbers) =>
        [.. plans.Yardsticks.Select(yardstick => yardstick.Method is { } method ? Used(yardstick, plans, plans.Method(method)!, sessions) : Cost(yardstick, numbers)).OfType<YardstickHeld>()];

    private static YardstickHeld? Used(Yardstick yardstick, PlanStatements plans, Method method, ImmutableArray<Session> sessions)
    {
        if (sessions.IsEmpty)
        {
            return null;
        }

        var (parts, product) = (ImmutableArray.CreateBuilder<YardstickPart>(), 1.0);
        foreach (var loss in UseChain.Of(method, TreatmentCalendar.Of(method, sessions[0]), plans).Losses)
        {
            product *= loss.Kept.Share;
            parts.Add(new(loss.Step, null, loss.Kept.Share, product));
        }

        return YardstickHeld.Of(yardstick, parts.ToImmutable());
    }

    /// <summary>Everything that is paid over all transfers, as if all that is asked turned out well: of a plan for nobody no transfer has a price.</summary>
    private static YardstickHeld? Cost(Yardstick yardstick, SeasonNumbers numbers)
    {
        if ((numbers.BudgetIfAllPass ?? numbers.Budget) is not { } budget || (numbers.IfAllPass ?? numbers.Forecast) is not { } forecast)
        {
            return null;
        }

        var transfers = forecast.At(Stage.Transfers).Mean;
        if (transfers < 0.005)
        {
            return new(yardstick, null, [], null, budget.IsAtLeast);
        }

        var (parts, sum) = (ImmutableArray.CreateBuilder<YardstickPart>(), 0.0);
        foreach (var line in budget.Lines.Where(line => line.Amount > 0).OrderByDescending(line => line.Amount))
        {
            sum += line.Amount / transfers;
            parts.Add(new(null, line.Charge, line.Amount / transfers, sum));
        }

        return YardstickHeld.Of(yardstick, parts.ToImmutable(), budget.IsAtLeast);
    }
}
