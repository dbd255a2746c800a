namespace Byrelaw.Workshop.Tests.Support;

/// <summary>Makes corrections, as an editor would.</summary>
public static class Corrections
{
    /// <summary>A text with a correction made in it.</summary>
    public static string In(this Correction correction, string text)
    {
        var source = new SourceFile("x", text);
        foreach (var made in correction.Replacements.OrderByDescending(made => (made.Line, made.Column)))
        {
            var start = source.StartOf(made.Line) + made.Column - 1;
            text = text[..start] + made.Text + text[(start + made.Length)..];
        }

        return text;
    }
}
