namespace Byrelaw.Reporting.Plans;

/// <summary>What is said of the forecast between those named and all who are asked about.</summary>
internal static class BetweenWords
{
    /// <summary><c>60%</c>: the share of those asked about that the programme takes to be usable.</summary>
    public static string Share(Plan plan) => ChanceWords.Rate(plan.Inputs.Plans.Assume(AssumedQuantity.AskedAndUsable)!.Share!.Value);
}
