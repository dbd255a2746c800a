using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Table = Markdig.Extensions.Tables.Table;

namespace Byrelaw.Reporting.Html;

/// <summary>In our pages a paragraph all in italics right before a table is the table's caption.</summary>
internal static class Captions
{
    private static readonly object Key = new();

    /// <summary>Takes captions out of the text and hangs them on their tables.</summary>
    public static void Lift(MarkdownDocument document)
    {
        for (var i = document.Count - 1; i > 0; i--)
        {
            if (document[i] is Table table && document[i - 1] is ParagraphBlock { Inline: { } inline }
                && inline.FirstChild is EmphasisInline { DelimiterCount: 1, NextSibling: null } caption)
            {
                table.SetData(Key, caption);
                document.RemoveAt(i - 1);
            }
        }
    }

    /// <summary>A table's caption; null for none.</summary>
    public static EmphasisInline? Of(Table table) => table.GetData(Key) as EmphasisInline;
}
