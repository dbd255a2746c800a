namespace Byrelaw.Judging.Truths;

/// <summary>Strong Kleene logic's three values, in the order of their truth.</summary>
public enum Truth : byte
{
    /// <summary>It is not so.</summary>
    False,

    /// <summary>The records do not say.</summary>
    Unknown,

    /// <summary>It is so.</summary>
    True,
}
