using Byrelaw.Reporting.Words;

namespace Byrelaw.Reporting.Causes;

/// <summary>A cause in words: its first row as any problem is told, and how many more there are.</summary>
public static class CauseText
{
    private const int MorePlaces = 2;

    /// <summary>For a terminal; lines end with LF.</summary>
    public static string Of(ProblemCause cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        return DiagnosticText.Of(cause.First) + string.Concat(new[] { More(cause), Kept(cause) }.OfType<string>().Select(line => $"  {line}\n"));
    }

    /// <summary>Where the same stands too; null where it stands once.</summary>
    public static string? More(ProblemCause cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        var (count, others) = (cause.Rows.Length - 1, cause.Rows.Skip(1).Take(MorePlaces + 1).Select(row => $"{row.Problem.Line}").ToList());
        return count == 0 ? null
            : $"the same in {(count == 1 ? "line" : "lines")} {(count <= MorePlaces + 1 ? Phrases.And(others) : $"{string.Join(", ", others.Take(MorePlaces))} and {count - MorePlaces} more")}: "
                + $"{cause.Rows.Length} rows{(cause.Animals == 0 ? "" : $", {Numbers.Count(cause.Animals, "animal", "animals")}")} in all";
    }

    /// <summary>Whom it keeps; null where nobody tried, or nobody.</summary>
    public static string? Kept(ProblemCause cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        return cause.AloneInAsk is not { Kept: > 0 } alone ? null : $"without it {(alone.Kept == 1 ? "1 animal" : $"{alone.Kept} of {alone.Of} animals")} would not be asked about";
    }

    /// <summary>What is not told; null where all is.</summary>
    public static string? Rest(IReadOnlyList<ProblemCause> causes)
    {
        ArgumentNullException.ThrowIfNull(causes);
        return causes.Count <= ProblemCauses.Most ? null
            : $"And {Numbers.Count(causes.Count - ProblemCauses.Most, "more cause", "more causes")}, of {Numbers.Count(causes.Skip(ProblemCauses.Most).Sum(cause => cause.Rows.Length), "row", "rows")}";
    }
}
