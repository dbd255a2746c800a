namespace Byrelaw.Judging.Tests.Reference;

/// <summary>One value for each day of a span.</summary>
/// <param name="First">The first day.</param>
/// <param name="Values">From the first day on.</param>
public sealed record ByDay<T>(int First, IReadOnlyList<T> Values)
{
    public int Last => First + Values.Count - 1;

    public T On(int day) => Values[day - First];

    public IEnumerable<T> Between(int from, int to) => Enumerable.Range(from, to - from + 1).Select(On);
}

/// <summary>Makes them.</summary>
public static class ByDay
{
    public static ByDay<T> Over<T>(int first, int last, Func<int, T> on) => new(first, [.. Enumerable.Range(first, last - first + 1).Select(on)]);
}
