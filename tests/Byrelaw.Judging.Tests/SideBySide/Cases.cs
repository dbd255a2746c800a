namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>How many random cases to try: as many as a build server has time for, or as <c>BYRELAW_CASES</c> says.</summary>
public static class Cases
{
    private static readonly string? Asked = Environment.GetEnvironmentVariable("BYRELAW_CASES");

    /// <summary>How many.</summary>
    public static long Count { get; } = long.TryParse(Asked, CultureInfo.InvariantCulture, out var count) ? count : 1200;

    /// <summary>The seed: the same each time on a build server; as <c>BYRELAW_SEED</c> says, to see a failure again; else another each time.</summary>
    public static ulong Seed { get; } =
        ulong.TryParse(Environment.GetEnvironmentVariable("BYRELAW_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed
        : Asked is null ? SameEachTime
        : (ulong)Random.Shared.NextInt64();

    private const ulong SameEachTime = 20_260_920;
}
