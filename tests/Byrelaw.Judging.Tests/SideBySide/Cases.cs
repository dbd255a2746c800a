using System.Globalization;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>How many random cases to try: as many as a build server has time for, or as <c>BYRELAW_CASES</c> says.</summary>
public static class Cases
{
    private static readonly string? Asked = Environment.GetEnvironmentVariable("BYRELAW_CASES");

    /// <summary>How many.</summary>
    public static long Count { get; } = long.TryParse(Asked, CultureInfo.InvariantCulture, out var count) ? count : 1200;

    /// <summary>Whether each run tries the same ones.</summary>
    public static bool AreTheSameEachTime => Asked is null;
}
