using Byrelaw.Checking.Examples;

namespace Byrelaw.Reporting.Terminal;

/// <summary>Why the animal of an example that failed got the answer she got.</summary>
public static class ExampleText
{
    /// <summary>Her explanation, indented, with line ends LF; met rules are listed too where it is about one rule only.</summary>
    public static string Of(ExpectationOutcome outcome, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        var report = new AnimalReport(new ListReport(outcome.Draft, outcome.Draft.Lists[0]), outcome.Animal);
        var lines = WhyText.Of(report, all: outcome.Rule is not null, ink).TrimEnd('\n').Split('\n');
        return string.Concat(lines.Select(line => line.Length == 0 ? "\n" : $"    {line}\n"));
    }
}
