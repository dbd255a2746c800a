namespace Byrelaw.Reporting.Lists;

/// <summary>What gave an animal her points.</summary>
public static class RankReasons
{
    /// <summary>Such as <c>Settled in milk (2)</c>.</summary>
    public static string Of(AnimalJudgement animal) =>
        string.Join(", ", animal.Prefers.Where(prefer => prefer.Truth == Truth.True && !prefer.Prefer.IsBroken)
            .Select(prefer => $"{prefer.Prefer.Name} ({Numbers.Of(prefer.Prefer.Counts)})"));
}
