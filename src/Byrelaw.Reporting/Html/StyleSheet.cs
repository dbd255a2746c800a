namespace Byrelaw.Reporting.Html;

/// <summary>The look of every page, kept in <c>page.css</c> beside this file and written into each document.</summary>
internal static class StyleSheet
{
    /// <summary>The style sheet.</summary>
    public static string Text { get; } = Read();

    private static string Read()
    {
        using var stream = typeof(StyleSheet).Assembly.GetManifestResourceStream("page.css")
            ?? throw new InvalidOperationException("page.css is not in the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
