namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>
/// Tries random cases and shows the first that fails. A build server tries the same cases each time, so
/// that a change is what turns it red; with <c>BYRELAW_CASES</c> set they are other ones each time, and
/// <c>BYRELAW_SEED</c> shows a failure again.
/// </summary>
public static class RandomCases
{
    /// <param name="cases">Where they come from.</param>
    /// <param name="count">How many.</param>
    /// <param name="failure">What is wrong with one; null where nothing is.</param>
    /// <param name="show">One as a person can read it.</param>
    public static void Hold<T>(Gen<T> cases, long count, Func<T, string?> failure, Func<T, string> show)
    {
        var seed = Cases.Seed;
        string? shown = null;
        Parallel.For(0, count, (number, loop) =>
        {
            var one = cases.Generate(new PCG((uint)number, seed), null, out _);
            if (failure(one) is { } wrong)
            {
                loop.Stop();

                // One case is enough: it is made smaller by what it means, which takes its time.
                if (Interlocked.CompareExchange(ref shown, wrong, null) is null)
                {
                    shown = $"case {number} of seed {seed}\n{wrong}\n{show(one)}";
                }
            }
        });
        if (shown is not null)
        {
            throw new ShouldAssertException(shown);
        }
    }
}
