using CsCheck;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Tries random cases and shows the first that fails.</summary>
public static class RandomCases
{
    /// <param name="cases">Where they come from.</param>
    /// <param name="count">How many.</param>
    /// <param name="failure">What is wrong with one; null where nothing is.</param>
    /// <param name="show">One as a person can read it.</param>
    public static void Hold<T>(Gen<T> cases, long count, Func<T, string?> failure, Func<T, string> show)
    {
        T? failed = default;
        var hasFailed = 0;
        try
        {
            // Once one has failed the others are let go: it is made smaller afterwards by what it means, not by chance.
            cases.Sample(
                one =>
                {
                    if (Volatile.Read(ref hasFailed) != 0 || failure(one) is null)
                    {
                        return true;
                    }

                    if (Interlocked.Exchange(ref hasFailed, 1) == 0)
                    {
                        failed = one;
                    }

                    return false;
                },
                iter: count,
                print: _ => "see below");
        }
        catch (CsCheckException exception) when (failed is not null)
        {
            throw new ShouldAssertException($"{failure(failed)}\n{show(failed)}\n{exception.Message}", exception);
        }
    }
}
