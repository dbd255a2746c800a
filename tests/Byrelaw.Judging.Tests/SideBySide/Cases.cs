using System.Globalization;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>How many random cases to try: as many as a build server has time for, or as <c>BYRELAW_CASES</c> says.</summary>
public static class Cases
{
    public static long Count { get; } =
        long.TryParse(Environment.GetEnvironmentVariable("BYRELAW_CASES"), CultureInfo.InvariantCulture, out var count) ? count : 1200;
}
