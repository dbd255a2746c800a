namespace Byrelaw.Reporting.Documents;

/// <summary>One page that people read; it is written as Markdown and as HTML.</summary>
/// <param name="Path">Within the report, forward slashes, without an ending: <c>animals/1423</c>.</param>
/// <param name="Title">Plain words, for the browser's title and for print.</param>
/// <param name="Head">What stands over it.</param>
/// <param name="Parts">In order; the first begins with the page's heading.</param>
public sealed record Page(string Path, string Title, PageHead Head, IReadOnlyList<Part> Parts)
{
    /// <summary>Who has the last word, whatever the page says.</summary>
    public const string Foot = "A paper answer: it knows what was written down and nothing else. The person with a hand on the animal decides against using her at any time; nobody on paper decides for it.";

    /// <summary>The whole page as Markdown.</summary>
    public string ToMarkdown()
    {
        var head = Head.InALine;
        var first = Parts[0].Blocks;
        var top = head.IsEmpty ? first : first.Insert(1, new Sentence(head));
        return string.Join('\n', Parts.Skip(1).Select(part => part.Markdown).Prepend(MarkdownWriter.Write(top)).Append(MarkdownWriter.Write([new Quotation(Foot)])).Where(text => text.Length > 0));
    }
}
