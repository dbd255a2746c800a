namespace Byrelaw.Judging.Verdicts;

/// <summary>What one rule says of one animal.</summary>
public enum RuleAnswer : byte
{
    /// <summary>It holds on every judging day.</summary>
    Met,

    /// <summary>It fails on a judging day.</summary>
    NotMet,

    /// <summary>The records do not say.</summary>
    NotKnown,

    /// <summary>She is not one the rule is for.</summary>
    DoesNotApply,

    /// <summary>The rule could not be read; nobody passes it.</summary>
    Broken,
}
