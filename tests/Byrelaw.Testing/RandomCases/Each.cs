using CsCheck;

namespace Byrelaw.Testing.RandomCases;

/// <summary>Tries random cases, each drawn from a seed by its number, and shows one that fails: by its number it comes again.</summary>
public static class Each
{
    /// <summary>Shows the first that fails: for cases that take long, or that the test makes smaller itself.</summary>
    /// <param name="cases">Where they come from.</param>
    /// <param name="count">How many on a build server.</param>
    /// <param name="failure">What is wrong with one; null where nothing is.</param>
    /// <param name="show">One as a person can read it.</param>
    public static void Hold<T>(Gen<T> cases, long count, Func<T, string?> failure, Func<T, string> show)
    {
        var (first, end) = Drawn.Numbers(count);
        string? shown = null;
        Parallel.For(first, end, (number, loop) =>
        {
            var one = Case(cases, number, null, out _);
            if (failure(one) is { } wrong)
            {
                loop.Stop();

                // One case is enough: it is made smaller by what it means, which takes its time.
                if (Interlocked.CompareExchange(ref shown, wrong, null) is null)
                {
                    shown = $"{Drawn.Again(number)}\n{wrong}\n{show(one)}";
                }
            }
        });
        if (shown is not null)
        {
            throw new CaseFailedException(shown);
        }
    }

    /// <summary>Shows the smallest that fails.</summary>
    /// <param name="cases">Where they come from.</param>
    /// <param name="check">Throws where something does not hold.</param>
    /// <param name="count">How many on a build server.</param>
    /// <param name="show">One as a person can read it; null for all its values.</param>
    /// <param name="oneByOne">Not several at once.</param>
    public static void Hold<T>(this Gen<T> cases, Action<T> check, long count = 100, Func<T, string>? show = null, bool oneByOne = false)
    {
        var (first, end) = Drawn.Numbers(count);
        var guard = new Lock();
        (long Number, Size Size, T Case, Exception Wrong)? smallest = null;
        Parallel.For(first, end, new ParallelOptions { MaxDegreeOfParallelism = oneByOne ? 1 : -1 }, number =>
        {
            var one = Case(cases, number, null, out var size);
            try
            {
                check(one);
            }
            catch (Exception wrong)
            {
                lock (guard)
                {
                    if (smallest is not { } other || Size.IsLessThan(size, other.Size))
                    {
                        smallest = (number, size, one, wrong);
                    }
                }
            }
        });
        if (smallest is var (found, _, failed, thrown))
        {
            throw new CaseFailedException($"{Drawn.Again(found)}\n{thrown.Message}\n{show?.Invoke(failed) ?? Check.Print(failed)}", thrown);
        }
    }

    /// <summary>The same where a check says whether it holds.</summary>
    public static void Hold<T>(this Gen<T> cases, Func<T, bool> check, long count = 100, Func<T, string>? show = null, bool oneByOne = false) =>
        cases.Hold(one => { _ = check(one) ? true : throw new CaseFailedException("it does not hold"); }, count, show, oneByOne);

    /// <summary>The same for cases of two parts.</summary>
    public static void Hold<T1, T2>(this Gen<(T1, T2)> cases, Action<T1, T2> check, long count = 100, bool oneByOne = false) =>
        cases.Hold(one => check(one.Item1, one.Item2), count, null, oneByOne);

    /// <summary>The same for cases of two parts, where a check says whether it holds.</summary>
    public static void Hold<T1, T2>(this Gen<(T1, T2)> cases, Func<T1, T2, bool> check, long count = 100, bool oneByOne = false) =>
        cases.Hold(one => check(one.Item1, one.Item2), count, null, oneByOne);

    /// <summary>The same for cases of three parts.</summary>
    public static void Hold<T1, T2, T3>(this Gen<(T1, T2, T3)> cases, Action<T1, T2, T3> check, long count = 100, bool oneByOne = false) =>
        cases.Hold(one => check(one.Item1, one.Item2, one.Item3), count, null, oneByOne);

    /// <summary>The same for cases of three parts, where a check says whether it holds.</summary>
    public static void Hold<T1, T2, T3>(this Gen<(T1, T2, T3)> cases, Func<T1, T2, T3, bool> check, long count = 100, bool oneByOne = false) =>
        cases.Hold(one => check(one.Item1, one.Item2, one.Item3), count, null, oneByOne);

    /// <summary>The same for cases of four parts.</summary>
    public static void Hold<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> cases, Action<T1, T2, T3, T4> check, long count = 100, bool oneByOne = false) =>
        cases.Hold(one => check(one.Item1, one.Item2, one.Item3, one.Item4), count, null, oneByOne);

    private static T Case<T>(Gen<T> cases, long number, Size? least, out Size size) => cases.Generate(new PCG((uint)number, Drawn.Seed), least, out size);
}
