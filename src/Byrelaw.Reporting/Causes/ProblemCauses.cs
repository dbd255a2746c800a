using System.Collections.Frozen;

namespace Byrelaw.Reporting.Causes;

/// <summary>Brings the problems of rows together by their cause.</summary>
public static class ProblemCauses
{
    /// <summary>So many are told of; the rest is counted.</summary>
    public const int Most = 10;

    /// <summary>More causes than so many are one.</summary>
    private const int MostDifferent = 10_000;

    private const char AnyDigit = '9';
    private const char AnyLetter = 'a';

    /// <summary>What these are about is a word of the farm's: each word is a cause of its own. Of all others the digits are a pattern.</summary>
    private static readonly FrozenSet<string> OfWords = FrozenSet.Create("R0135", "R0142", "R0151", "R0161", "R0162", "R0165", "R0171", "R0173");

    /// <summary>What these are about is a day: the letters of a month are a pattern, too.</summary>
    private static readonly FrozenSet<string> OfDays = FrozenSet.Create("R0121", "R0123", "R0124", "R0125", "R0126", "R0127", "R0210");

    /// <summary>These say of which number they are, and it is another in each row.</summary>
    private static readonly FrozenSet<string> OfAnyAnimal = FrozenSet.Create("R0132", "R0133", "R0134", "R0140");

    /// <summary>The causes, in the order of their first rows.</summary>
    public static IReadOnlyList<ProblemCause> Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var rows = new Dictionary<(string Code, string File, string Pattern), ImmutableArray<RowProblem>.Builder>();
        var patterns = new Dictionary<(string Code, string Found), string>();
        var order = new List<ImmutableArray<RowProblem>.Builder>();
        foreach (var row in herd.RowProblems)
        {
            if (!patterns.TryGetValue((row.Problem.Code, row.Problem.Found), out var pattern))
            {
                pattern = Pattern(row.Problem);
                if (patterns.Count < MostDifferent)
                {
                    patterns.Add((row.Problem.Code, row.Problem.Found), pattern);
                }
            }

            var key = (row.Problem.Code, row.Problem.File, pattern);
            if (!rows.TryGetValue(key, out var same))
            {
                same = order.Count < MostDifferent ? ImmutableArray.CreateBuilder<RowProblem>() : order[^1];
                rows.Add(key, same);
                if (order.Count < MostDifferent)
                {
                    order.Add(same);
                }
            }

            same.Add(row);
        }

        return [.. order.Select(same => new ProblemCause(same.ToImmutable(), Animals(same)))];
    }

    /// <summary>Those that keep most animals in Ask first, then those of most rows; as before where they are even.</summary>
    public static IReadOnlyList<ProblemCause> Sorted(IEnumerable<ProblemCause> causes) =>
        [.. causes.OrderByDescending(cause => cause.AloneInAsk?.Kept ?? 0).ThenByDescending(cause => cause.Rows.Length)];

    private static string Pattern(Diagnostic problem)
    {
        // A number that is written otherwise is no word.
        if (OfWords.Contains(problem.Code) && !(problem.Code == "R0151" && IsOfDigits(problem.Found)))
        {
            return problem.Found;
        }

        if (OfAnyAnimal.Contains(problem.Code))
        {
            return "";
        }

        var areLetters = OfDays.Contains(problem.Code);
        var pattern = new StringBuilder(problem.Found.Length);
        foreach (var sign in problem.Found)
        {
            var shown = char.IsAsciiDigit(sign) ? AnyDigit : areLetters && char.IsLetter(sign) ? AnyLetter : sign;
            if (shown is not (AnyDigit or AnyLetter) || pattern.Length == 0 || pattern[^1] != shown)
            {
                pattern.Append(shown);
            }
        }

        return pattern.ToString();
    }

    private static bool IsOfDigits(string found) => found.Split('`') is [_, var cell, ..] && cell.Any(char.IsAsciiDigit) && !cell.Any(char.IsLetter);

    private static int Animals(IEnumerable<RowProblem> rows) => rows.Where(row => row.Animal >= 0).Select(row => row.Animal).Distinct().Count();
}
