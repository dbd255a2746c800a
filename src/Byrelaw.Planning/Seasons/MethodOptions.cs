namespace Byrelaw.Planning.Seasons;

/// <summary>The methods that a programme may have its recipients ready by.</summary>
internal static class MethodOptions
{
    /// <summary>Those that the programme names, the first liked best; all methods for recipients where it names none.</summary>
    public static ImmutableArray<Option> Of(SeasonInputs inputs)
    {
        var methods = inputs.Aims.Recipients.IsEmpty
            ? inputs.Plans.Methods.Where(method => !method.IsForDonors)
            : inputs.Aims.Recipients.Select(preparation => inputs.Plans.Method(preparation.Method)).OfType<Method>();
        return
        [
            .. from method in methods.DistinctBy(method => method.Name)
               join serving in inputs.Serving on method.Name equals serving.Method
               select new Option(Chain(inputs, method, serving), inputs.Plans.CostOf(method)?.Amount, inputs.OnHand.Animals),
        ];
    }

    private static UseChain Chain(SeasonInputs inputs, Method method, ServingDays serving) => method.IsNatural
        ? UseChain.OfNaturalHeat(method, serving.Days.Length, inputs.Plans.Assume(AssumedQuantity.RecipientsCycling)?.Share?.ToRate())
        : UseChain.OfTreatment(method, day => serving.Days.Contains(day));
}
