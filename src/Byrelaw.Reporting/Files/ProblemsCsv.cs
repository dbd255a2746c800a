namespace Byrelaw.Reporting.Files;

/// <summary>Every problem of the records for a spreadsheet: one line each.</summary>
public static class ProblemsCsv
{
    /// <summary>The file's name in a report.</summary>
    public const string File = "problems.csv";

    /// <summary>The file's text.</summary>
    public static string Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var whose = herd.RowProblems.Where(row => row.Animal >= 0).DistinctBy(row => row.Problem).ToDictionary(row => row.Problem, row => herd.Numbers[row.Animal]);
        var csv = new StringBuilder(Csv.Record("file", "line", "column", "severity", "code", "animal", "found", "expected", "mend", "row"));
        foreach (var problem in herd.Problems)
        {
            csv.Append(Csv.Record(
                PlainText.Clean(FileWords.Short(problem.File)), $"{problem.Line}", $"{problem.Column}", problem.Severity == Severity.Error ? "error" : "warning", problem.Code,
                PlainText.Clean(whose.GetValueOrDefault(problem, "")), PlainText.Clean(problem.Found), PlainText.Clean(problem.Expected ?? ""), PlainText.Clean(problem.Help ?? ""), PlainText.Clean(problem.LineText)));
        }

        return csv.ToString();
    }
}
