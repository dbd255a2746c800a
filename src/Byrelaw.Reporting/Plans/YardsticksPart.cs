using Byrelaw.Planning.Yardsticks;

namespace Byrelaw.Reporting.Plans;

/// <summary>What people quote, beside what the plan comes to.</summary>
internal static class YardsticksPart
{
    public static Part Of(Plan plan)
    {
        var table = new Table("What people quote, and what it comes to here", "what", "people say", "here", "made of", "what makes the difference");
        foreach (var held in plan.Yardsticks)
        {
            table.Add(
                Wording.Bold(What(held)), $"{Figure(held, held.Said)}{(Why(held) is { } why ? $": {why}" : "")}",
                held.Plan is { } here ? (held.IsAtLeast ? "at least " : "") + Figure(held, here) : "nothing is transferred",
                string.Join(", ", held.Parts.Select((part, i) => Made(held, part, i))), Difference(held));
        }

        return table.IsEmpty ? Part.None : new DocumentBuilder().Heading(2, "What people quote")
            .Sentence($"Held against the plan{(plan.Numbers.IfAllPass is null ? "" : ", as if all asked pass")}; it changes nothing.").Table(table)
            .Sentence("What people quote often leaves a part out, or counts other animals: ask what theirs counts before you plan by it.").As("yardsticks");
    }

    /// <summary>In a sentence, for the top of the page; null where nothing is quoted of money.</summary>
    public static string? OnTop(Plan plan) => plan.Yardsticks.FirstOrDefault(held => held is { Yardstick.Cost: not null, Plan: not null }) is not { } held ? null
        : $"A transfer costs {(held.IsAtLeast ? "at least " : "")}{Figure(held, held.Plan!.Value)}{(plan.Numbers.IfAllPass is null ? "" : ", if all asked pass")}: "
            + $"{string.Join(", ", held.Parts.Take(3).Select(part => $"{PlanWords.Of(part.Charge!)} {MoneyWords.Number(part.Value)}"))}{(held.Parts.Length > 3 ? " and more" : "")}. People say {Figure(held, held.Said)}: {(held.Without is { IsEmpty: true } ? "that is within a tenth of it" : Difference(held))}.";

    private static string What(YardstickHeld held) => held.Yardstick.Method is { } method ? $"{method}: used, of those treated" : "cost of each embryo transferred";

    private static string? Why(YardstickHeld held) => held.Yardstick.Because ?? held.Yardstick.Source;

    private static string Figure(YardstickHeld held, double value) => held.Yardstick.Cost is { } cost ? MoneyWords.Of(value, cost.Currency) : ChanceWords.Rate(value);

    private static string Made(YardstickHeld held, YardstickPart part, int place) => $"{Name(part)} {(held.Yardstick.Cost is null ? ChanceWords.Rate(part.Value) : MoneyWords.Number(part.Value))}"
        + (place == 0 ? "" : $" ({(held.Yardstick.Cost is null ? ChanceWords.Rate(part.SoFar) : MoneyWords.Number(part.SoFar))} so far)");

    internal static string Name(YardstickPart part) => part.Charge is { } charge ? PlanWords.Of(charge) : PlanWords.Of(part.Step!.Value, false, true).Step;

    private static string Difference(YardstickHeld held) => held switch
    {
        { Plan: null } => "nothing to compare: of a plan by which nothing is transferred no transfer has a price",
        { Without: { IsEmpty: true } } => "none to speak of: they are within a tenth of each other",
        { Without: { } without } => $"that is about what is left here without {Phrases.And([.. without.Select(part => $"“{Name(part)}”")])}: {Figure(held, held.Left(without))}",
        _ => "no part that is left out explains it",
    };
}
