namespace Byrelaw.Language.Diagnostics;

/// <summary>
/// Prints a problem the one way people read it: place and message, the line with the place
/// marked, and the mend.
/// </summary>
public static class DiagnosticText
{
    private const int LongestLine = 160;
    private const int Before = 60;

    /// <summary>One problem: on two to four lines, and more where an example shows it. Each is ended with LF.</summary>
    public static string Of(Diagnostic problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var severity = problem.Severity == Severity.Error ? "error" : "warning";
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{problem.File}:{problem.Line}:{problem.Column}: {severity} {problem.Code}: {Printable(problem.Message)}\n");
        AppendLine(text, problem);
        if (problem.Shown is not null)
        {
            text.Append("  for example:\n");
            foreach (var line in problem.Shown.Split('\n'))
            {
                text.Append(CultureInfo.InvariantCulture, $"    {Printable(line)}\n");
            }
        }

        if (problem.Help is not null)
        {
            text.Append(CultureInfo.InvariantCulture, $"  help: {Printable(problem.Help)}\n");
        }

        foreach (var line in problem.Lines?.Split('\n') ?? [])
        {
            text.Append(line.Length == 0 ? "\n" : $"    {Printable(line)}\n");
        }

        return text.ToString();
    }

    /// <summary>All problems, with an empty line after each.</summary>
    public static string Of(IEnumerable<Diagnostic> problems) => string.Concat(problems.Select(problem => Of(problem) + "\n"));

    private static void AppendLine(StringBuilder text, Diagnostic problem)
    {
        if (problem.LineText.Length == 0)
        {
            return;
        }

        var start = Math.Clamp(problem.Column - 1, 0, problem.LineText.Length);
        var end = Math.Clamp(start + problem.Length, start, problem.LineText.Length);
        var (first, last) = Shown(problem.LineText, start);
        var before = Printable(problem.LineText[first..start]);
        var marked = Printable(problem.LineText[start..Math.Max(start, Math.Min(end, last))]);
        var after = Printable(problem.LineText[Math.Max(start, Math.Min(end, last))..last]);
        var head = first > 0 ? "…" : "";
        var tail = last < problem.LineText.Length ? "…" : "";
        text.Append(CultureInfo.InvariantCulture, $"{problem.Line,5} | {head}{before}{marked}{after}{tail}\n");
        var indent = new string(' ', DisplayWidth.Of(head + before));
        text.Append(CultureInfo.InvariantCulture, $"      | {indent}{new string('^', Math.Max(1, DisplayWidth.Of(marked)))}\n");
    }

    /// <summary>The part of a very long line that is worth printing.</summary>
    private static (int First, int Last) Shown(string line, int start)
    {
        if (line.Length <= LongestLine)
        {
            return (0, line.Length);
        }

        var first = Math.Max(0, start - Before);
        var last = Math.Min(line.Length, first + LongestLine);
        first = first > 0 && char.IsLowSurrogate(line[first]) ? first - 1 : first;
        last = last < line.Length && char.IsLowSurrogate(line[last]) ? last - 1 : last;
        return (first, Math.Max(last, start));
    }

    /// <summary>Tabs as four spaces; signs that would upset a terminal as a dot.</summary>
    private static string Printable(string text)
    {
        var printable = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            printable.Append(c switch
            {
                '\t' => "    ",
                _ when char.IsControl(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => "·",
                _ => c.ToString(),
            });
        }

        return printable.ToString();
    }
}
