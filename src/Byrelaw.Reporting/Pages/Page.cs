namespace Byrelaw.Reporting.Pages;

/// <summary>One page people read: Markdown is its source, HTML is made of it.</summary>
/// <param name="Path">Within the report, forward slashes, without an ending: <c>recipients/animals/1423</c>.</param>
/// <param name="Title">Plain words, for the browser's title and for print.</param>
/// <param name="Standing">For the head of every printed page: records to, void after.</param>
/// <param name="Parts">In order.</param>
public sealed record Page(string Path, string Title, string Standing, IReadOnlyList<Part> Parts)
{
    /// <summary>The whole page as Markdown.</summary>
    public string ToMarkdown()
    {
        var text = new StringBuilder();
        foreach (var part in Parts.Where(part => part.Markdown.Length > 0))
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            text.Append(part.Markdown.TrimEnd('\n')).Append('\n');
        }

        return text.ToString();
    }
}

/// <summary>A part of a page: one section of the HTML.</summary>
/// <param name="Class">What it is, for the style sheet.</param>
/// <param name="Markdown">Its text; empty for a part that only HTML can show.</param>
/// <param name="Picture">HTML that follows the text, made by this program (an inline picture); null for none.</param>
public sealed record Part(string Class, string Markdown, string? Picture = null);
