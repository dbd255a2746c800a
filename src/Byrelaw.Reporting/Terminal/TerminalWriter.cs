namespace Byrelaw.Reporting.Terminal;

/// <summary>Writes blocks for a terminal. Pictures are left out.</summary>
public static class TerminalWriter
{
    /// <summary>The blocks as lines ended with LF; no line ends with a blank.</summary>
    public static string Write(IEnumerable<Element> blocks, Ink ink)
    {
        var text = new StringBuilder();
        foreach (var block in blocks)
        {
            Write(text, block, ink);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, Element block, Ink ink)
    {
        switch (block)
        {
            case EmptyLine:
                text.Append('\n');
                break;
            case Heading heading:
                Line(text, block, ink.Bold(heading.Words.ToString()));
                break;
            case Sentence sentence:
                Line(text, block, Styled(sentence.Words, ink));
                break;
            case Quotation quotation:
                Line(text, block, Styled(quotation.Words, ink));
                break;
            case Listing list:
                for (var i = 0; i < list.Items.Length; i++)
                {
                    Line(text, block, (list.IsNumbered ? $"{i + 1}. " : "- ") + Styled(list.Items[i], ink));
                }

                break;
            case FileLines lines:
                foreach (var line in lines.Lines)
                {
                    Line(text, block, line);
                }

                break;
            case Table table:
                TerminalTable.Lines(table, ink).ForEach(line => Line(text, block, line));
                break;
            case Drawn drawn:
                foreach (var said in drawn.InWords())
                {
                    Write(text, said with { Depth = block.Depth }, ink);
                }

                break;
            default:
                break;
        }
    }

    private static void Line(StringBuilder text, Element block, string words) =>
        text.Append((new string(' ', 2 * block.Depth) + words).TrimEnd(' ')).Append('\n');

    /// <summary>Words with what sets them off.</summary>
    internal static string Styled(Wording words, Ink ink)
    {
        if (words.Runs.All(run => run.Style == RunStyle.Plain))
        {
            return words.ToString();
        }

        return string.Concat(words.Runs.Select(run => (Text: PlainText.CleanWithin(run.Text), run.Style)).Select(run =>
            run.Style switch { RunStyle.Bold or RunStyle.Danger or RunStyle.MayBe => ink.Bold(run.Text), RunStyle.Faint => ink.Faint(run.Text), _ => run.Text })).TrimEnd(' ');
    }
}
