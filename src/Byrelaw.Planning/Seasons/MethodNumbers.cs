namespace Byrelaw.Planning.Seasons;

/// <summary>One method's numbers.</summary>
/// <param name="Option">The method with its chain of losses and its cost.</param>
/// <param name="Enough">
/// How many to treat at one session so that enough are accepted for the embryos to expect (as many as come in every other session); null
/// without embryos.
/// </param>
/// <param name="Second">Its second chance; null where it has none.</param>
/// <param name="TakesWhoeverComes">Natural heat: nobody chooses who comes on heat, so all that may be used are watched.</param>
public sealed record MethodNumbers(Option Option, Enough? Enough, Second? Second, bool TakesWhoeverComes)
{
    /// <summary>The most animals tried, whether or not the farm has them; where more than these must be treated on average, twice that average.</summary>
    private const int Most = 500;

    internal static MethodNumbers Of(SeasonInputs inputs, Option option, int? embryos, double certainty)
    {
        var method = inputs.Plans.Method(option.Chain.Method)!;
        var used = option.Preparing.Used;
        var enough = embryos is { } accepted ? Enough.Of(accepted, certainty, used, Math.Max(Most, used.Share > 0 ? (int)Math.Min(2 * accepted / used.Share, 20 * Most) : 0)) : null;
        return new(option, enough, Second.Of(method, used), method.IsNatural);
    }
}
