namespace Byrelaw.Language.Reasoning;

/// <summary>A condition, made ready to be reasoned about.</summary>
internal abstract record Formula
{
    /// <summary>Neither true nor false of any animal in a way that could be followed.</summary>
    public static readonly Formula Unclear = new SingleCondition(Claim.Anything, Claim.Anything);

    /// <summary>It holds where the other does not.</summary>
    public static Formula Not(Formula formula) => formula is Opposite opposite ? opposite.Of : new Opposite(formula);

    /// <summary>At least one holds.</summary>
    public static Formula Any(params Formula[] formulas) => new AtLeast(1, [.. formulas]);

    /// <summary>All hold.</summary>
    public static Formula All(params Formula[] formulas) => new AtLeast(formulas.Length, [.. formulas]);
}

/// <summary>A single condition.</summary>
/// <param name="WhenTrue">What holds of an animal of whom it is true.</param>
/// <param name="WhenFalse">What holds of one of whom it is false.</param>
internal sealed record SingleCondition(Claim WhenTrue, Claim WhenFalse) : Formula;

/// <summary>So many of these hold.</summary>
internal sealed record AtLeast(int Count, ImmutableArray<Formula> Items) : Formula;

/// <summary>It holds where the other does not.</summary>
internal sealed record Opposite(Formula Of) : Formula;
