namespace Byrelaw.Language.Canonical;

/// <summary>A method the one way.</summary>
internal static class MethodText
{
    /// <summary>The block.</summary>
    public static string Of(Method method) => RuleText.Block(
        $"method {NameText.Text(method.Name)}",
        [
            method.IsForDonors ? "for donors" : null,
            method.Suits is { } suits ? RuleText.Condition("suits ", suits) : null,
            .. method.Steps.Select(Of),
            method.CycleDays is { } cycle ? $"cycles every {NumberText.Of(cycle)} days" : null,
            method.HeatDay is { } heat ? $"counts as heat on day {NumberText.Of(heat)}" : null,
            method.InHeat is { } spread ? $"in heat {PlanText.Of(spread.Share)}{string.Concat(spread.Days.Select(Of))}" : null,
            method.HeatSeen is { } seen ? $"heat seen {PlanText.Of(seen)}" : null,
            method.Accepted is { } accepted ? $"accepted on the day {PlanText.Of(accepted)}" : null,
            method.Again is { } again ? $"if not seen by day {NumberText.Of(again.NotSeenBy)}, again on day {NumberText.Of(again.From)}{(again.To == again.From ? "" : $" to {NumberText.Of(again.To)}")}" : null,
            method.FlushDay is { } flush ? $"flushed on day {NumberText.Of(flush)}" : null,
            method.Cost is { } cost ? $"costs {PlanText.Of(cost)} per animal treated" : null,
            .. RuleText.Reasons(method.Because, method.Source, null),
        ]);

    private static string Of(MethodStep step)
    {
        var part = step.Part switch { DayPart.Morning => " morning", DayPart.Evening => " evening", _ => "" };
        var after = step.After is { } hours ? $", {NumberText.Of(hours.Hours)} hours after day {NumberText.Of(hours.Day)}" : "";
        var device = step.Device switch { DeviceMove.In => ", device in", DeviceMove.Out => ", device out", _ => "" };
        return $"day {NumberText.Of(step.Day)}{part} {NameText.Text(step.Text)}{after}{device}";
    }

    private static string Of((int Day, double Share) heat, int place) =>
        $", {(place == 0 ? "on " : "")}day {NumberText.Of(heat.Day)} {NumberText.Of(Math.Round(100 * heat.Share, 10))}%";
}
