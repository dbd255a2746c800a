using Byrelaw.Planning.Forecasting;
using Byrelaw.Planning.Mattering;

namespace Byrelaw.Reporting.Plans;

/// <summary>Which assumptions the forecast depends on most.</summary>
internal static class MattersPart
{
    private const int MostOnTop = 3;

    public static Part Of(Plan plan)
    {
        if (plan.WhatMatters.IsEmpty)
        {
            return Part.None;
        }

        var table = new Table($"{Phrases.Sentence(Counted(plan))} to expect{(plan.Numbers.IfAllPass is null ? "" : ", if all asked pass")}, were one number known to be low or high", "what", "low", "high", "then expect", "makes a difference of");
        foreach (var one in plan.WhatMatters)
        {
            table.Add(
                Wording.Bold(Name(one)), Value(one, one.Low), Value(one, one.High) + (one.IsExact ? " (taken as exact: a tenth less and more)" : ""),
                $"{ChanceWords.Mean(one.AtLow)} to {ChanceWords.Mean(one.AtHigh)}", Difference(one));
        }

        return new DocumentBuilder().Heading(2, "What matters most")
            .Sentence("Low is where one chance in ten lies below, high where one lies above; the animals named stay as they are. What stands first is worth finding out first.")
            .Table(table).As("matters");
    }

    /// <summary><c>What matters most: embryos per oocyte (7 to 28%) 2.9 live heifer calves; ...</c>; null where nothing is forecast.</summary>
    public static string? OnTop(Plan plan) => plan.WhatMatters.IsEmpty ? null
        : $"What matters most: {string.Join("; ", plan.WhatMatters.Take(MostOnTop).Select((one, i) => $"{Name(one)} ({Value(one, one.Low)} to {Value(one, one.High)}) {Difference(one)}{(i == 0 ? $" {Counted(plan)}" : "")}"))}.";

    private static string Counted(Plan plan) => PlanWords.Of(plan.Numbers.Reading.Chain!.Goal?.Of ?? plan.Numbers.Reading.Chain.AfterTransfer.Select(step => step.To).DefaultIfEmpty(Stage.Transfers).Last(), PlanHead.Aims(plan).Embryos);

    internal static string Name(Matter one) => one.Assumed is { } assumed ? AssumptionsPart.Name(assumed) : $"{PlanWords.Of(one.Step!.Value, false, true).Step} by {one.Method}";

    private static string Value(Matter one, double value) => one.Assumed is { Share: null } ? Numbers.Of(Math.Round(value, 1)) : ChanceWords.Rate(value);

    private static string Difference(Matter one) => ChanceWords.Mean(one.Difference);
}
