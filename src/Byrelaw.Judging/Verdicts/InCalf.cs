namespace Byrelaw.Judging.Verdicts;

/// <summary>What the floor's rules say of her on the days judged, on every list.</summary>
public enum InCalf : byte
{
    /// <summary>All of them hold, or the files have no words for them.</summary>
    NotTold,

    /// <summary>None is false, and one is not known.</summary>
    MayBe,

    /// <summary>One of them is false.</summary>
    TakeAsInCalf,
}
