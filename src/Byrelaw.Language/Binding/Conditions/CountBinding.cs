namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Whole numbers: counts and lengths of time.</summary>
internal static class CountBinding
{
    private const double Most = 100_000;

    /// <summary>A demand on a count; null where its numbers are none.</summary>
    public static CountTest? CountTest(this Context context, CountTestSyntax test)
    {
        if (test.LowUnit is { } unit)
        {
            return context.Fail<CountTest>(AmountProblems.UnitNotWanted(unit.Span, "a count"));
        }

        return test.Low is null ? new CountTest(test.Comparison, 0, 0) : context.CountTest(test, test.Comparison, test.Low, test.High);
    }

    /// <summary>A demand on a count, from its limits.</summary>
    public static CountTest? CountTest(this Context context, SyntaxNode whole, Comparison comparison, NumberSyntax low, NumberSyntax? high)
    {
        var (from, to) = (context.Count(low), context.Count(high ?? low, again: high is null));
        return from is not { } a || to is not { } b ? null
            : a > b ? context.Fail<CountTest>(AmountProblems.Backwards(whole.Span))
            : new CountTest(comparison, a, b);
    }

    /// <summary>A whole number; null where it is none.</summary>
    /// <param name="context">Where to say so.</param>
    /// <param name="number">The number.</param>
    /// <param name="again">Whether it has been looked at, and its problem told, before.</param>
    public static int? Count(this Context context, NumberSyntax number, bool again = false) =>
        IsWhole(number.Value) ? (int)number.Value
        : again ? null
        : context.None<int>(AmountProblems.NotACount(number.Span));

    /// <summary>A length of time; null where its number is not whole.</summary>
    public static TimeLength? Length(this Context context, DurationSyntax duration) =>
        IsWhole(duration.Count.Value)
            ? new TimeLength((int)duration.Count.Value, duration.Unit)
            : context.None<TimeLength>(AmountProblems.NotWholeTime(duration.Count.Span));

    /// <summary>A demand on a time; null where its numbers are none.</summary>
    public static TimeTest? TimeTest(this Context context, SyntaxNode whole, Comparison comparison, DurationSyntax low, DurationSyntax? high)
    {
        if (context.Length(low) is not { } from)
        {
            return null;
        }

        if (high is null)
        {
            return new TimeTest(comparison, from, from);
        }

        return context.Length(high) is not { } to ? null
            : IsAbove(from, to) ? context.Fail<TimeTest>(AmountProblems.Backwards(whole.Span))
            : new TimeTest(comparison, from, to);
    }

    /// <summary>Whether one length is surely above another, whatever the month.</summary>
    public static bool IsAbove(TimeLength a, TimeLength b) => Days(a).Least > Days(b).Most;

    private static (double Least, double Most) Days(TimeLength length) => length.Unit switch
    {
        TimeUnit.Days => (length.Count, length.Count),
        TimeUnit.Weeks => (length.Count * 7.0, length.Count * 7.0),
        TimeUnit.Months => ((length.Count * 30.4) - 3, (length.Count * 30.5) + 3),
        _ => ((length.Count * 365.2) - 1, (length.Count * 365.3) + 1),
    };

    private static bool IsWhole(double value) => value is >= 0 and <= Most && value == Math.Floor(value);
}
