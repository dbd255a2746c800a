namespace Byrelaw.Reporting.Pages;

/// <summary>What is wrong in the records, with file and line.</summary>
public static class RecordProblems
{
    private const int AtMost = 200;

    /// <summary>The part of the list's page.</summary>
    public static Part Of(ListReport list)
    {
        var problems = list.Herd.Problems;
        var part = new DocumentBuilder().Heading(2, "Problems in the records");
        if (problems.IsEmpty)
        {
            return part.Sentence("None found.").As("problems");
        }

        part.Bullets(problems.Take(AtMost).Select(Line));
        if (problems.Length > AtMost)
        {
            part.Sentence($"And {Numbers.Count(problems.Length - AtMost, "more", "more")}: byrelaw records lists them all.");
        }

        return part.As("problems");
    }

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
