using Byrelaw.Reporting.Causes;

namespace Byrelaw.Reporting.Pages;

/// <summary>What is wrong in the records, with file and line.</summary>
public static class RecordProblems
{
    /// <summary>The part of the list's page.</summary>
    public static DocumentBuilder Said(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var problems = herd.Problems;
        var part = new DocumentBuilder().Heading(2, "Problems in the records");
        if (problems.IsEmpty)
        {
            return part.Sentence("None found.");
        }

        var causes = ProblemCauses.Sorted(ProblemCauses.Of(herd));
        var ofRows = herd.RowProblems.Select(row => row.Problem).ToHashSet();
        part.Bullets([.. problems.Where(problem => !ofRows.Contains(problem)).Select(Line), .. causes.Take(ProblemCauses.Most).Select(Line)]);
        if (causes.Any(cause => cause.Rows.Length > 1) || CauseText.Rest(causes) is not null)
        {
            part.Sentence($"{(CauseText.Rest(causes) is { } rest ? $"{rest}. " : "")}Every row stands in problems.csv.");
        }

        return part;
    }

    private static Wording Line(ProblemCause cause) => CauseText.More(cause) is { } more ? $"{Line(cause.First)} {Phrases.Sentence(more)}." : Line(cause.First);

    private static Wording Line(Diagnostic problem)
    {
        var word = problem.Severity == Severity.Error ? "error" : "warning";
        var help = problem.Help is null ? "" : $" {Phrases.Sentence(Phrases.Stop(problem.Help))}";
        return $"{Wording.Bold($"{FileWords.Short(problem.File)} line {problem.Line}")}, {word} {problem.Code}: {Quoted(Phrases.Stop(problem.Message) + help)}";
    }

    /// <summary>Messages quote with back-ticks; on a page for people they are quotation marks.</summary>
    private static string Quoted(string message)
    {
        var pieces = message.Split('`');
        return pieces.Length % 2 == 0 ? message : string.Concat(pieces.Select((piece, i) => i == 0 ? piece : (i % 2 == 1 ? "“" : "”") + piece));
    }
}
