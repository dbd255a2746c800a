namespace Byrelaw.Reporting.Html;

/// <summary>The look of every page and the small script that finds an animal. They lie once in a report; a page that goes alone has them in it.</summary>
public static class PageFiles
{
    /// <summary>The style sheet's name in a report.</summary>
    public const string StyleFile = "page.css";

    /// <summary>The script's name in a report.</summary>
    public const string ScriptFile = "page.js";

    /// <summary>The style sheet.</summary>
    public static string Style { get; } = Read(StyleFile);

    /// <summary>The script.</summary>
    public static string Script { get; } = Read(ScriptFile);

    /// <summary>Both, for a report.</summary>
    public static IEnumerable<ReportFile> Files => [new(StyleFile, Style), new(ScriptFile, Script)];

    private static string Read(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not in the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
