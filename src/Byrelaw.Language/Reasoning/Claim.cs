namespace Byrelaw.Language.Reasoning;

/// <summary>What must hold together.</summary>
internal sealed record Together(ImmutableArray<Bound> Bounds, ImmutableArray<OneOf> Texts)
{
    public static readonly Together Nothing = new([], []);

    public static Together Of(params Bound[] bounds) => new([.. bounds], []);

    public static Together Of(params OneOf[] texts) => new([], [.. texts]);

    public Together And(Together other) => new(Bounds.AddRange(other.Bounds), Texts.AddRange(other.Texts));
}

/// <summary>
/// What must hold of an animal for a condition to be true of her (or to be false): one of some alternatives. None means
/// that it never is; an empty alternative that nothing need hold.
/// </summary>
internal sealed record Claim(ImmutableArray<Together> Alternatives)
{
    // More than this is not followed any further: then less is claimed than could be, and never too much.
    private const int Most = 48;

    /// <summary>Nothing need hold.</summary>
    public static readonly Claim Anything = new([Together.Nothing]);

    /// <summary>It cannot be.</summary>
    public static readonly Claim Never = new([]);

    public static Claim Of(params Bound[] bounds) => new([Together.Of(bounds)]);

    public static Claim Of(params OneOf[] texts) => new([Together.Of(texts)]);

    /// <summary>Both hold.</summary>
    public Claim And(Claim other) => Alternatives.Length * other.Alternatives.Length > Most
        ? Alternatives.Length <= other.Alternatives.Length ? this : other
        : new Claim([.. Alternatives.SelectMany(_ => other.Alternatives, (one, two) => one.And(two))]);

    /// <summary>One of the two holds.</summary>
    public Claim Or(Claim other) => new(Alternatives.AddRange(other.Alternatives));

    /// <summary>All hold.</summary>
    public static Claim All(IEnumerable<Claim> claims) => claims.Aggregate(Anything, (one, two) => one.And(two));

    /// <summary>One holds.</summary>
    public static Claim Any(IEnumerable<Claim> claims) => claims.Aggregate(Never, (one, two) => one.Or(two));
}
