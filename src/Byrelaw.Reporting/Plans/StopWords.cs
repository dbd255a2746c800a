using Byrelaw.Planning.Stopping;

namespace Byrelaw.Reporting.Plans;

/// <summary>Says first of all that so many abort that nobody is to be treated.</summary>
internal static class StopWords
{
    /// <summary>The sentence; null where nothing gives cause for it.</summary>
    public static string? Of(Plan plan) => HerdStop.Of(plan.Draft.Herd, LocalDate.Min(plan.Today, plan.Draft.Herd.KnownDay)) is not { } stop ? null
        : $"STOP. {Numbers.Count(stop.Abortions.Length, "abortion", "abortions")} within {HerdStop.Within} days: {Phrases.And([.. stop.Abortions.Select(one => $"{one.Number} on {Dates.Long(one.Date, plan.Today.Year)}")])}"
            + (stop.InCalf == 0 ? ". " : $", where {stop.InCalf} were in calf before. ")
            + "Give nobody a hormone and put in no embryo before a licensed vet has looked into it; a device comes out all the same. Some causes make people ill: gloves, and nobody who is or may be pregnant near them.";
}
