namespace Byrelaw.Planning.Yardsticks;

/// <summary>A figure that people quote, beside the plan's own. It changes nothing.</summary>
/// <param name="Yardstick">What people say.</param>
/// <param name="Plan">What the plan comes to: a share of animals treated, or money for each embryo transferred; null where nothing is transferred.</param>
/// <param name="Parts">What that is made of: shares with their running product, or money with its running sum.</param>
/// <param name="Without">The fewest parts without which the plan comes within a tenth of it; none where it does so by itself; null where no part explains it.</param>
/// <param name="IsAtLeast">Whether a price is missing, so that it costs at least so much.</param>
public sealed record YardstickHeld(Yardstick Yardstick, double? Plan, ImmutableArray<YardstickPart> Parts, ImmutableArray<YardstickPart>? Without, bool IsAtLeast)
{
    /// <summary>So near to what people say counts as what they say.</summary>
    private const double Near = 0.1;

    /// <summary>What people say: a share, or money.</summary>
    public double Said => Yardstick.Used ?? Yardstick.Cost!.Value.Amount;

    /// <summary>The plan's figure without some of its parts.</summary>
    public double Left(IEnumerable<YardstickPart> without) => Of(Yardstick, [.. Parts.Except(without)]);

    /// <summary>Held against parts whose product (of shares) or sum (of money) is the plan's figure.</summary>
    internal static YardstickHeld Of(Yardstick yardstick, ImmutableArray<YardstickPart> parts, bool isAtLeast = false)
    {
        var held = new YardstickHeld(yardstick, Of(yardstick, parts), parts, null, isAtLeast);
        return held with { Without = Fewest(held) };
    }

    private static double Of(Yardstick yardstick, ImmutableArray<YardstickPart> parts) =>
        yardstick.Used is null ? parts.Sum(part => part.Value) : parts.Aggregate(1.0, (product, part) => product * part.Value);

    /// <summary>All sets of parts but the whole, the smallest first, of equal ones the one that comes nearest.</summary>
    private static ImmutableArray<YardstickPart>? Fewest(YardstickHeld held)
    {
        var count = held.Parts.Length;
        (int Size, double Apart, ImmutableArray<YardstickPart> Parts)? best = null;
        for (var set = 0; set < (1 << count) - 1 || (count == 0 && set == 0); set++)
        {
            ImmutableArray<YardstickPart> without = [.. held.Parts.Where((_, i) => ((set >> i) & 1) == 1)];
            var apart = Math.Abs(held.Left(without) - held.Said);
            if (apart <= Near * held.Said && (best is null || (without.Length, apart).CompareTo((best.Value.Size, best.Value.Apart)) < 0))
            {
                best = (without.Length, apart, without);
            }
        }

        return best?.Parts;
    }
}

/// <summary>One part of a figure.</summary>
/// <param name="Step">A method's step; null for money.</param>
/// <param name="Charge">What is paid for; null for a share.</param>
/// <param name="Value">The share of those that got so far, or money for each embryo transferred.</param>
/// <param name="SoFar">The product, or the sum, up to here.</param>
public sealed record YardstickPart(UseStep? Step, Charge? Charge, double Value, double SoFar);
