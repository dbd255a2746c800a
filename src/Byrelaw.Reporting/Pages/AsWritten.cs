using Byrelaw.Language.Sources;

namespace Byrelaw.Reporting.Pages;

/// <summary>A line of a rule file as it stands there, with its place.</summary>
internal static class AsWritten
{
    /// <summary><c>“complete for calving since 2024-06-01” (farm.byre line 12)</c>.</summary>
    public static string Of(SourceSpan span) => $"{Quoted(span.File is null ? "" : span.Text)} ({ChangeHistory.Place(span)})";

    /// <summary>The whole line that something stands on.</summary>
    public static string LineOf(SourceSpan span) => $"{Quoted(span.File is null ? "" : WithoutRemark(span.File.Line(span.Line)))} ({ChangeHistory.Place(span)})";

    private static string Quoted(string text) => $"“{string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}”";

    private static string WithoutRemark(string line) => line.IndexOf('#', StringComparison.Ordinal) is var at and > 0 && !line.Contains('"', StringComparison.Ordinal) ? line[..at] : line;
}
