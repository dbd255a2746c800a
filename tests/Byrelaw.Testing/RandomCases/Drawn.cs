using System.Globalization;

namespace Byrelaw.Testing.RandomCases;

/// <summary>
/// How many random cases are drawn, and from where. A build server draws the same sample each time, so that a change is what turns it red. <c>BYRELAW_TIMES=20</c>
/// draws twenty times as many of every random test, other ones each time: the long trial. Every failure prints a seed and a number;
/// <c>BYRELAW_SEED</c> draws from that seed, <c>BYRELAW_CASE</c> that one case only.
/// </summary>
public static class Drawn
{
    private const ulong SameEachTime = 20_260_920;
    private static readonly long? AskedTimes = Asked("BYRELAW_TIMES");

    /// <summary>What the cases are drawn from.</summary>
    public static ulong Seed { get; } =
        ulong.TryParse(Environment.GetEnvironmentVariable("BYRELAW_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed
        : AskedTimes is null ? SameEachTime
        : (ulong)System.Random.Shared.NextInt64();

    /// <summary>The one case that is asked for; null for all.</summary>
    public static long? Only { get; } = Asked("BYRELAW_CASE");

    /// <summary>The numbers of the cases of a test that draws so many on a build server.</summary>
    public static (long First, long End) Numbers(long count) => Only is { } one ? (one, one + 1) : (0, count * (AskedTimes ?? 1));

    /// <summary>How to see a case again.</summary>
    public static string Again(long number) => $"case {number} of seed {Seed}; to see it again, run this test with BYRELAW_SEED={Seed} BYRELAW_CASE={number}";

    private static long? Asked(string name) => long.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number) ? number : null;
}
