namespace Byrelaw.Workshop.Correcting;

/// <summary>Shows a change as people would say it: the words that come of it, with the words beside them.</summary>
internal static class Snippet
{
    private const int WordsBeside = 2;

    /// <summary>The mended words in back-ticks.</summary>
    public static string Of(Proposal made)
    {
        var line = made.At.File.Line(made.At.Line);
        var start = made.At.Column - 1;
        var end = Math.Min(line.Length, start + made.At.Length);
        var text = made.Text.Split('\n')[0];
        return Quoted.Of((Before(line[..start], Words(text)) + text + After(line[end..], Words(text))).Trim());
    }

    // What is said in full needs no neighbours.
    private static int Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length > 1 ? 0 : WordsBeside;

    private static string Before(string text, int words)
    {
        var at = text.Length;
        for (var i = 0; i < words || (at > 0 && text[at - 1] != ' '); i++)
        {
            at = Math.Max(0, text[..at].TrimEnd(' ').LastIndexOf(' ') + 1);
        }

        return text[at..];
    }

    private static string After(string text, int words)
    {
        var at = 0;
        for (var i = 0; (i < words || (at < text.Length && text[at] != ' ')) && at < text.Length; i++)
        {
            var rest = text[at..];
            var skipped = rest.Length - rest.TrimStart(' ').Length;
            var space = rest.IndexOf(' ', skipped);
            at = space < 0 ? text.Length : at + space;
        }

        return text[..at];
    }
}
