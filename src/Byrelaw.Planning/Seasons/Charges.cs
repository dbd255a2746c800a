namespace Byrelaw.Planning.Seasons;

/// <summary>All that a season pays for: the programme's prices, each with its number.</summary>
internal static class Charges
{
    /// <param name="inputs">Prices, and the numbers that are known beforehand.</param>
    /// <param name="sessions">As planned.</param>
    public static ImmutableArray<Charge> Of(SeasonInputs inputs, ImmutableArray<SessionSize> sessions)
    {
        var plans = inputs.Plans;
        var donorTreatments = sessions.Sum(session => session.AllDonors * session.Times);
        var treated = sessions.SelectMany(session => session.Treated.Select(one => (one.Method.Name, Animals: one.Animals * session.Times)))
            .Concat(inputs.Aims.DonorMethod is { } donors ? [(donors, donorTreatments)] : [])
            .GroupBy(one => one.Item1).Select(method => (Method: plans.Method(method.Key), Animals: method.Sum(one => one.Item2)))
            .Where(one => one.Method is not null).ToArray();
        var kept = treated.Where(one => one.Method is { IsNatural: false, IsForDonors: false }).Sum(one => one.Animals);
        return
        [
            .. treated.Select(one => Treatment(plans, one.Method!, one.Animals)).OfType<Charge>(),
            .. plans.Costs.Where(line => line.Per != CostUnit.AnimalTreated && (line.Per != CostUnit.DayOfKeep || DaysOfKeep(plans) is not null)).Select(line => new Charge(line.Per, null, line.Amount.Amount, line.Spread ?? 0, line.Per switch
            {
                CostUnit.Visit => inputs.Visits,
                CostUnit.Sample => inputs.Samples,
                CostUnit.DayOfKeep => kept * DaysOfKeep(plans),
                _ => null,
            })),
            .. from task in inputs.Tasks
               where task.Task.Cost is not null
               select new Charge(CostUnit.Programme, task.Task.Name, task.Task.Cost!.Amount.Amount, 0, task.Task.Cost.IsPerAnimal ? task.Animals : 1),
        ];
    }

    /// <summary>The one currency of the file; empty where no money is spoken of.</summary>
    public static string Currency(SeasonInputs inputs) =>
        inputs.Aims.Budget?.Currency
        ?? inputs.Plans.Costs.Select(line => line.Amount.Currency)
            .Concat(inputs.Plans.Methods.Select(method => method.Cost?.Currency).OfType<string>())
            .Concat(inputs.Tasks.Select(task => task.Task.Cost?.Amount.Currency).OfType<string>())
            .FirstOrDefault() ?? "";

    /// <summary>What keeping one recipient costs; null where the programme does not say a price for the day, or not how many days.</summary>
    public static double? Keep(PlanStatements plans) => plans.Cost(CostUnit.DayOfKeep)?.Amount.Amount * DaysOfKeep(plans);

    private static double? DaysOfKeep(PlanStatements plans) => plans.Assume(AssumedQuantity.DaysOfKeepPerRecipient)?.Mean;

    private static Charge? Treatment(PlanStatements plans, Method method, int animals)
    {
        var line = plans.Costs.FirstOrDefault(one => one.Method is { } name && NameFolding.Fold(name) == NameFolding.Fold(method.Name));
        return plans.CostOf(method) is { } cost ? new(CostUnit.AnimalTreated, method.Name, cost.Amount, line?.Spread ?? 0, animals) : null;
    }
}
