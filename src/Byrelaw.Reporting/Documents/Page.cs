namespace Byrelaw.Reporting.Documents;

/// <summary>One page that people read; it is written as Markdown and as HTML.</summary>
/// <param name="Path">Within the report, forward slashes, without an ending: <c>recipients/animals/1423</c>.</param>
/// <param name="Title">Plain words, for the browser's title and for print.</param>
/// <param name="Standing">For the head of every printed page: records to, void after.</param>
/// <param name="Parts">In order.</param>
public sealed record Page(string Path, string Title, string Standing, IReadOnlyList<Part> Parts)
{
    /// <summary>The whole page as Markdown.</summary>
    public string ToMarkdown() => string.Join('\n', Parts.Select(part => part.Markdown).Where(text => text.Length > 0));
}
