namespace Byrelaw.Planning.Seasons;

/// <summary>The methods that a programme may have its recipients ready by.</summary>
internal static class MethodOptions
{
    /// <summary>Those that the programme names, the first liked best; all methods for recipients where it names none.</summary>
    public static ImmutableArray<Option> Of(SeasonInputs inputs) =>
    [
        .. from method in inputs.Aims.MethodsOf(inputs.Plans).DistinctBy(method => method.Name)
           join uses in inputs.Uses on method.Name equals uses.Method
           select new Option(uses, inputs.Plans.CostOf(method)?.Amount),
    ];
}
