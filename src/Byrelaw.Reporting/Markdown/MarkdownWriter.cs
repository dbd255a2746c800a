namespace Byrelaw.Reporting.Markdown;

/// <summary>Writes blocks as Markdown. Pictures are left out.</summary>
public static class MarkdownWriter
{
    /// <summary>The blocks, a blank line between them, ended with LF; empty for none.</summary>
    public static string Write(IEnumerable<Element> blocks)
    {
        var text = new StringBuilder();
        foreach (var block in blocks.SelectMany(InWords).Where(block => block is not (Picture or EmptyLine)))
        {
            text.Append(text.Length > 0 ? "\n" : "");
            Write(text, block);
        }

        return text.ToString();
    }

    /// <summary>What is drawn is written as it is said in words; what is folded in it may be drawn too.</summary>
    private static IEnumerable<Element> InWords(Element block) => block is Drawn drawn ? drawn.InWords().SelectMany(InWords) : [block];

    /// <summary>Words on one line.</summary>
    public static string Write(Wording words)
    {
        var text = new StringBuilder();
        Write(text, words);
        return text.ToString();
    }

    private static void Write(StringBuilder text, Element block)
    {
        switch (block)
        {
            case Heading heading:
                Line(text.Append('#', heading.Level).Append(' '), heading.Words);
                break;
            case Sentence sentence:
                Line(text, sentence.Words);
                break;
            case Quotation quotation:
                Line(text.Append("> "), quotation.Words);
                break;
            case Listing list:
                for (var i = 0; i < list.Items.Length; i++)
                {
                    Line(list.IsNumbered ? text.Append(i + 1).Append(". ") : text.Append("- "), list.Items[i]);
                }

                break;
            case FileLines lines:
                var fence = Fence(lines.Lines);
                text.Append(fence).Append('\n').AppendJoin('\n', lines.Lines).Append('\n').Append(fence).Append('\n');
                break;
            case Table table:
                text.Append('*').Append(MarkdownText.Of(table.Caption)).Append("*\n\n");
                Row(text, table.Columns.Select(column => (Wording)column.Heading));
                text.Append('|').Insert(text.Length, " --- |", table.Columns.Length).Append('\n');
                foreach (var row in table.Rows)
                {
                    Row(text, row);
                }

                break;
            default:
                throw new NotSupportedException(block.GetType().Name);
        }
    }

    private static void Line(StringBuilder text, Wording words)
    {
        Write(text, words);
        text.Append('\n');
    }

    private static void Row(StringBuilder text, IEnumerable<Wording> cells)
    {
        text.Append('|');
        foreach (var cell in cells)
        {
            text.Append(' ');
            var start = text.Length;
            Write(text, cell);
            text.Append(text.Length == start ? "  |" : " |");
        }

        text.Append('\n');
    }

    private static void Write(StringBuilder text, Wording words)
    {
        var start = text.Length;
        for (var i = 0; i < words.Runs.Count; i++)
        {
            var run = words.Runs[i];
            var target = FileOf(run.Target);
            if (target is not null && (i == 0 || words.Runs[i - 1].Target != run.Target))
            {
                text.Append('[');
            }

            var mark = run.Style is RunStyle.Bold or RunStyle.Danger or RunStyle.MayBe ? "**" : "";
            var clean = PlainText.CleanWithin(run.Text);
            clean = text.Length == start || text[^1] == ' ' ? clean.TrimStart(' ') : clean;
            text.Append(mark).Append(MarkdownText.Escaped(clean, startsLine: text.Length == start || mark.Length > 0 || target is not null, isLink: target is not null)).Append(mark);
            if (target is not null && (i == words.Runs.Count - 1 || words.Runs[i + 1].Target != run.Target))
            {
                text.Append("](").Append(target).Append(')');
            }
        }

        Trim(text, start);
    }

    /// <summary>A place within a page is one of the HTML only: Markdown leads to the page, or nowhere on the page itself.</summary>
    private static string? FileOf(string? target) => target is null or ['#', ..] ? null : target.IndexOf('#', StringComparison.Ordinal) is var at and > 0 ? target[..at] : target;

    /// <summary>Longer than any run of backquotes in the lines.</summary>
    private static string Fence(ImmutableArray<string> lines)
    {
        var fence = "```";
        while (lines.Any(line => line.Contains(fence, StringComparison.Ordinal)))
        {
            fence += "`";
        }

        return fence;
    }

    private static void Trim(StringBuilder text, int start)
    {
        while (text.Length > start && text[^1] == ' ')
        {
            text.Length--;
        }
    }
}
