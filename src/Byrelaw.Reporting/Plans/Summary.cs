namespace Byrelaw.Reporting.Plans;

/// <summary>A plan in a few sentences: for the top of its page and for the terminal.</summary>
public static class Summary
{
    /// <summary>The sentences, the most pressing first.</summary>
    public static IReadOnlyList<string> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string?[] numbers = TooEarly.Words(plan) is { } early ? [early] : [Wanted(plan), Animals(plan), Money(plan), YardsticksPart.OnTop(plan), MattersPart.OnTop(plan)];
        return [.. new[] { When(plan) }.Concat(numbers).Concat([Late(plan), Past(plan), Silent(plan)]).OfType<string>()];
    }

    private static string? When(Plan plan)
    {
        var sessions = plan.Calendar.Sessions;
        if (sessions.IsEmpty)
        {
            return "No transfer is set, so there is no calendar: the programme needs a `collection` or a `transfer` line.";
        }

        var first = sessions[0];
        var collected = first.Collection is { } day ? $"{(PlanHead.Aims(plan).Embryos == EmbryoOrigin.Flushed ? "Flush" : "Collection")} on {Dates.Long(day)}, transfer" : "Transfer";
        return $"{collected} on {Dates.Range(first.FirstTransfer, first.FinalTransfer)}"
            + (sessions.Length > 1 ? $", {Numbers.Times(sessions.Length)} in all, the last on {Dates.Long(sessions[^1].FinalTransfer)}." : ".");
    }

    private static string? Wanted(Plan plan)
    {
        if (PlanHead.Aims(plan).Wants is not { } wants || plan.Numbers.Forecast is not { Chance: { } chance } forecast)
        {
            return null;
        }

        var sure = plan.Numbers.IfAllPass is { Chance: { } atBest }
            ? $"{ChanceWords.Of(chance)} sure with those named, {(plan.Numbers.Between is { Chance: { } between } ? $"{ChanceWords.Of(between)} if {BetweenWords.Share(plan)} of those asked pass, " : "")}{ChanceWords.Of(atBest)} if all asked pass" : $"{ChanceWords.Of(chance)} sure";
        var wanted = $"{Phrases.Sentence(PlanWords.Of(wants.What, wants.Count))} or more: {sure}, and {ChanceWords.Of(wants.Sure)} was wished";
        return chance >= wants.Sure ? wanted + "."
            : forecast.CountedOn!.Value == 0 ? wanted + "; nothing can be counted on as surely as that."
            : $"{wanted}; as surely as that, count on {PlanWords.Of(wants.What, forecast.CountedOn.Value)}.";
    }

    private static string? Animals(Plan plan) => plan.Sessions.IsEmpty ? null
        : $"Recipients: {Phrases.And([.. plan.Sessions.Select(Of)])}.";

    private static string Of(Planning.Naming.NamedSession session) =>
        $"session {session.Number} {(session.Wanted is { } wanted ? $"wants {wanted} and has" : "has")} {(session.Named.IsEmpty ? "none" : $"{session.Named.Length}")} named"
        + (session.ToAsk.IsEmpty ? "" : $" and {session.ToAsk.Length} to ask") + (session.Short is > 0 and var missing ? $" ({missing} short)" : "");

    private static string? Money(Plan plan) => plan.Numbers.Budget is not { } budget ? null
        : $"Cost{(plan.Numbers.BudgetIfAllPass is null ? "" : ", with those named")}: {BudgetWords.Total(budget)}{Without(budget)}{(budget.IsAtLeast ? "" : MoneyWords.Spread(budget.Low, budget.High, ", "))}"
            + (BudgetWords.Within(budget) is { Length: > 0 } within ? $"; {within}." : ".")
            + (plan.Numbers.BudgetIfAllPass is { } all && Math.Abs(all.Total - budget.Total) >= 1 ? $" If all asked pass: {BudgetWords.Total(all)}." : "");

    private static string Without(Budget budget) => budget.NotPriced.IsEmpty ? ""
        : $" (without {BudgetWords.Missing(budget)}: no price is given)";

    private static string? Late(Plan plan)
    {
        var late = plan.Calendar.Calving.Sessions.Where(session => session.IsTooLate).ToArray();
        return late.Length == 0 ? null
            : $"Too late for this season: {(late.Length == plan.Calendar.Sessions.Length ? "every session" : Numbers.Count(late.Length, "session", "sessions"))} "
                + $"would calve after {Dates.Long(plan.Calendar.Calving.CalveBy!.Value)}, the last acceptable day.";
    }

    private static string? Silent(Plan plan) => DecisionWords.Silent(plan).Select(task => TaskWords.Name(task)).ToList() is { Count: > 0 } silent
        ? $"{Phrases.And(silent)}: {DecisionWords.Silence}" : null;

    private static string? Past(Plan plan)
    {
        var past = plan.Calendar.Tasks.Count(task => task.IsPast && !task.Task.IsDecision);
        return past == 0 ? null : $"{Phrases.Sentence(Numbers.Count(past, "task is", "tasks are"))} past {(past == 1 ? "its" : "their")} last day already.";
    }
}
