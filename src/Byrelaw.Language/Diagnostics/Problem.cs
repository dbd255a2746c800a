namespace Byrelaw.Language.Diagnostics;

/// <summary>Makes diagnostics out of places in rule files.</summary>
internal static class Problem
{
    /// <summary>Something that has to be mended.</summary>
    public static Diagnostic Error(string code, SourceSpan at, string found, string? expected = null, string? help = null) =>
        At(code, Severity.Error, at, found, expected, help);

    /// <summary>Something worth a look.</summary>
    public static Diagnostic Warning(string code, SourceSpan at, string found, string? expected = null, string? help = null) =>
        At(code, Severity.Warning, at, found, expected, help);

    private static Diagnostic At(string code, Severity severity, SourceSpan at, string found, string? expected, string? help)
    {
        var line = at.Line;
        var text = at.File.Line(line);
        var column = Math.Min(at.Column, text.Length + 1);
        var length = Math.Clamp(at.Length, 1, Math.Max(1, text.Length + 1 - column));
        return new Diagnostic(code, severity, at.File.Path, line, column, length, found, expected, help, text);
    }
}
